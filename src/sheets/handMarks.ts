import type { Cut, CutSize } from '../cuts/Cut.ts';
import { keptSides } from '../cuts/keptSides.ts';
import { factorySide, printedSizes } from '../drawing/index.ts';
import type { TileSpec } from '../job/Job.ts';
import type { Figure } from '../measure/index.ts';
import { tileOutline } from '../pattern/index.ts';
import type { SheetContext } from './SheetContext.ts';

/** A size that is marked by hand: what is measured and from where, in words, and whether a straightedge is held to a point of the tile for it. */
export interface HandMark {
  readonly where: string;
  readonly figure: Figure;
  readonly atPoint: boolean;
}

type Told = Pick<SheetContext, 'say' | 'figure' | 'packet'>;

/**
 * Sizes that no fence gives: a slanted cut is marked at both ends, each on the edge of the tile that the size is named
 * for, and sawn to the line; so is a cut whose tile has no straight edge to lie against the fence that way. One size from a
 * point does not tell which way the line runs, so what the line leaves of the sides it ends on stands beside it.
 */
export function handMarks(context: Told, cut: Cut, tile: TileSpec): readonly HandMark[] {
  const { say, figure } = context;
  const settings = new Set(cut.fences.map(({ on, exact }) => `${on} ${exact}`));
  const sizes = printedSizes(cut).filter(({ from, exact }) => !settings.has(`${from} ${exact}`));
  return sizes.flatMap((size) => {
    const where = say(`sheet.saw-list.at.${size.what}`);
    const shown = figure(size.saw);
    if (size.from === 'none' || factorySide(size.from, tile))
      return [{ where, figure: shown, atPoint: false }];
    const shape = tile.shape?.kind === 'round' ? 'round' : 'point';
    const alone = size.what === 'width' || size.what === 'length';
    const told = say('sheet.saw-list.fromPoint', {
      at: shape === 'round' ? shape : size.from,
      where: alone ? 'none' : where,
    });
    return [
      { where: told, figure: shown, atPoint: true },
      ...(alone && shape === 'point' ? keptMarks(context, cut, size, tile) : []),
    ];
  });
}

/** One figure where both ends leave as much of their sides, or one end alone lies on a side; else one an end. */
function keptMarks(
  { say, figure, packet }: Told,
  cut: Cut,
  size: CutSize,
  tile: TileSpec,
): readonly HandMark[] {
  const kept = keptSides(cut, size, tileOutline(tile), packet.spec.print.step);
  const [one, other] = kept;
  const alike = one && (!other || other.saw === one.saw);
  const told = alike ? [{ end: other ? 'both' : 'one', saw: one.saw }] : kept;
  return told.map(({ end, saw }) => ({
    where: say('sheet.saw-list.keeps', { end }),
    figure: figure(saw),
    atPoint: true,
  }));
}
