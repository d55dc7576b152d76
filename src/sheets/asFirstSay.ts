import { rangeOn } from '../geometry/index.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import type { SheetContext } from './SheetContext.ts';

/** Rounding moves a line or a tile by so few ticks. */
const ROUNDING = 4;

/**
 * Where lines run beside tiles and not on joints: beside which tile of the first one's course a further line lies, as the line through the crossing that
 * it is parallel to lies beside the first tile. Nothing of a line that no such tile lies beside.
 */
export function asFirstSay({ say }: SheetContext, { chalk, pieces }: PacketSurface): string[] {
  const { lines, further = [], firstPiece } = chalk;
  const first = pieces.find(({ id }) => id === firstPiece);
  if (!first) return [];
  return further.flatMap(({ name, axis: way, from }) => {
    const [axis, beside] = way === 'along' ? ([0, 1] as const) : ([1, 0] as const);
    const main = lines.find((line) => line.axis === way);
    if (!main) return [];
    const at = rangeOn(first.fullTile, axis)[0] + from[axis] - main.from[axis];
    const level = rangeOn(first.fullTile, beside)[0];
    const tile = pieces.find(
      ({ fullTile, quarter }) =>
        quarter === first.quarter &&
        Math.abs(rangeOn(fullTile, axis)[0] - at) <= ROUNDING &&
        Math.abs(rangeOn(fullTile, beside)[0] - level) <= ROUNDING,
    );
    if (!tile) return [];
    const figures = { line: name, tile: tile.id, main: main.name, first: firstPiece };
    return [say('sheet.set-out.asFirst', figures)];
  });
}
