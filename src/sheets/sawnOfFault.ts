import type { Cut } from '../cuts/Cut.ts';
import type { Fault } from '../layout/Layout.ts';
import type { Ticks } from '../measure/index.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import type { SheetContext } from './SheetContext.ts';

/** A size at the wide and at the narrow end, in saw steps; the same where a cut is square. */
export interface SawnSize {
  readonly wide: Ticks;
  readonly narrow: Ticks;
  /** The wide end as a share of the tile that way. */
  readonly share: number;
}

/** Kinds of cuts whose length and width are sizes between two opposite sides. */
const SQUARE: ReadonlySet<Cut['kind']> = new Set(['rip', 'corner', 'taper', 'notch', 'u']);

/** Sizes along the tile and across it, by what the saw list calls them. */
const WAYS = [
  { side: 'length', names: ['length', 'bottomLength', 'topLength'] },
  { side: 'width', names: ['width', 'leftLength', 'rightLength'] },
] as const;

/**
 * The least of the pieces that a fault names, as the saw list has it, so that both sheets tell one size; undefined where the saw list
 * does not tell each of them by length and width.
 */
export function sawnOfFault(
  { packet }: SheetContext,
  { cuts }: PacketSurface,
  { code, pieces }: Fault,
): SawnSize | undefined {
  const named = new Set(pieces);
  const found = cuts
    .filter((cut) => cut.pieces.some((id) => named.has(id)))
    .map((cut) => sizeOf(cut, packet.spec.tiles.find(({ key }) => key === cut.tile)!, code === 'nearFull'));
  if (found.some((one) => one === undefined)) return undefined;
  return found.flatMap((one) => one ?? []).sort((a, b) => a.narrow - b.narrow)[0];
}

/** Along or across, whichever is the smaller share of the tile, or the larger where that is what is found fault with. */
function sizeOf(
  cut: Cut,
  tile: { readonly length: Ticks; readonly width: Ticks },
  isLarge: boolean,
): SawnSize | undefined {
  if (!SQUARE.has(cut.kind)) return undefined;
  const both = WAYS.flatMap(({ side, names }): SawnSize[] => {
    const sizes = cut.sizes.filter(({ what }) => (names as readonly string[]).includes(what));
    if (sizes.length === 0) return [];
    const saws = sizes.map(({ saw }) => saw);
    const share = Math.max(...sizes.map(({ exact }) => exact)) / tile[side];
    return [{ wide: Math.max(...saws), narrow: Math.min(...saws), share }];
  });
  return both.sort((a, b) => (isLarge ? b.share - a.share : a.share - b.share))[0];
}
