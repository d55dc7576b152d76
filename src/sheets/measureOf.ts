import type { PacketSurface } from '../packet/Packet.ts';
import type { SheetContext } from './SheetContext.ts';

/** Two measures of a tile that differ by no more than this share of it are told apart by no one. */
const ALIKE = 0.02;

/**
 * Which measure of its tile the size of some pieces' fault is held against: a piece may have lost nearly nothing of one and more than half of the other. `either`
 * where both are alike, or the tile is measured otherwise.
 */
export function measureOf(
  { packet }: SheetContext,
  surface: Pick<PacketSurface, 'pieces'>,
  pieces: readonly string[],
  { size, share }: Readonly<Record<string, unknown>>,
): 'length' | 'width' | 'either' {
  const key = surface.pieces.find(({ id }) => id === pieces[0])?.tile;
  const tile = packet.spec.tiles.find((one) => one.key === key);
  if (!tile || typeof size !== 'number' || typeof share !== 'number') return 'either';
  const { length, width } = tile;
  if (Math.abs(length - width) <= ALIKE * length) return 'either';
  const off = (side: number) => Math.abs(size / share - side);
  const nearer = off(length) < off(width) ? 'length' : 'width';
  return off(tile[nearer]) <= ALIKE * tile[nearer] ? nearer : 'either';
}
