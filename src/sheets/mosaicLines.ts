import { shapeArea } from '../geometry/index.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import { edgeWords } from './edgeWords.ts';
import type { SheetContext } from './SheetContext.ts';

/** How mosaic sheets are laid: along which walls they are cut between chips and how wide the gap is there, and how many they are by area. */
export function mosaicLines(
  { say, length, number, packet }: SheetContext,
  surface: PacketSurface,
): readonly string[] {
  const { chips, pattern, field } = surface;
  const chip = packet.spec.tiles.find(({ key }) => key === pattern.tiles[0]?.tile)?.chip;
  if (!chips) return [];
  const [along, across] = chips.count;
  const module = Math.abs(pattern.a[0] * pattern.b[1] - pattern.a[1] * pattern.b[0]);
  const area = field.reduce((sum, shape) => sum + shapeArea(shape), 0);
  const gaps = new Map<number, string[]>();
  for (const { edge, gap } of chips.between)
    gaps.set(gap, [...(gaps.get(gap) ?? []), edgeWords(surface, edge, say)]);
  return [
    say('mosaic.sheets', { along, across, sheets: number(Math.ceil((10 * area) / module) / 10) }),
    ...(chip ? [say('mosaic.nested', { chip: chip.kind, across: length(chip.across) })] : []),
    ...[...gaps].map(([gap, edges]) => say('mosaic.between', { edges: edges.join(', '), gap: length(gap) })),
  ];
}
