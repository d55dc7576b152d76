import type { Cut, CutSize } from '../cuts/Cut.ts';
import type { Ring } from '../geometry/index.ts';
import { figure, type Notation } from '../measure/index.ts';
import { type Box, boxOf, overlap, segmentMeets } from './boxes.ts';
import { type TileSides, tileRing } from './cutFrame.ts';
import type { FigureMark, Mark, Spot } from './Mark.ts';
import { type PaperSide, type PlacedSize, placeSizes } from './placeSizes.ts';
import { type Scale, toPaper } from './Scale.ts';
import { segmentPast } from './segmentPast.ts';
import { angleTo, move } from './signs.ts';
import { path, sawFigure } from './text.ts';
import { textBox, textSize } from './textBox.ts';

/** Its figures stand this far beyond the line, and lines break off as far from figures of others, in mm. */
const beyond = 1;
const clear = 0.6;
/** Figures keep apart so that nobody reads two as one, more where one stands and the other lies, whose lines cross, in mm. */
const apart = { alike: 1, crosswise: 2 } as const;
/** A figure moved past the extension lines of others stays as near to its line, in mm. */
const farthest = 16;
type Segment = readonly [Spot, Spot];

/** A figure that stands already, and how it is turned. */
interface Taken {
  readonly box: Box;
  readonly turn: number;
}

const outward: Readonly<Record<PaperSide, number>> = {
  right: 0,
  top: Math.PI / 2,
  left: Math.PI,
  bottom: -Math.PI / 2,
};

/** Sizes that are something as printed: what rounds to 0 is no length to saw. */
export function printedSizes({ sizes }: Pick<Cut, 'sizes'>): readonly CutSize[] {
  return sizes.filter(({ saw }) => saw > 0);
}

/** A spot brought straight out to the dimension line. */
function project([x, y]: Spot, side: PaperSide, away: number, tile: Box): Spot {
  if (side === 'bottom') return [x, tile.bottom - away];
  if (side === 'top') return [x, tile.top + away];
  return side === 'left' ? [tile.left - away, y] : [tile.right + away, y];
}

/** Both extension lines of a size, from its ends on the piece to its line. */
function extensionsOf({ a, b, side, away }: PlacedSize, tile: Box): readonly Segment[] {
  return [a, b].map((spot) => [spot, project(spot, side, away, tile)] as const);
}

/** A size's line, with extension lines and slashes; what runs over a figure is broken there. */
function lineMarks({ a, b, side, away }: PlacedSize, tile: Box, figures: readonly Box[]): readonly Mark[] {
  const out = outward[side];
  const ends = [a, b].map((spot) => project(spot, side, away, tile)) as [Spot, Spot];
  const along = out + Math.PI / 2;
  const broken = (from: Spot, to: Spot) =>
    segmentPast(from, to, figures, clear).map((part) => path(part, 'dimension'));
  const extension = (spot: Spot, end: Spot) => broken(move(spot, out, 0.8), move(end, out, 1.2));
  const slash = (at: Spot) =>
    path([move(at, along + Math.PI / 4, 1.25), move(at, along + Math.PI / 4, -1.25)], 'slash');
  return [
    ...extension(a, ends[0]),
    ...extension(b, ends[1]),
    ...broken(...ends),
    slash(ends[0]),
    slash(ends[1]),
  ];
}

/** The figure beside its line, moved along or out until it touches no other figure. */
function figureMark(
  placed: PlacedSize,
  tile: Box,
  units: Notation,
  taken: readonly Taken[],
  lines: readonly Segment[],
): FigureMark {
  const { a, b, side, away, size, type } = placed;
  const out = outward[side];
  const parts = figure(size.saw, units);
  const whole =
    size.from === 'none' && size.what.includes('iameter') ? `Ø ${parts.whole}`.trimEnd() : parts.whole;
  const turn = side === 'left' || side === 'right' ? 90 : 0;
  const [from, to] = [a, b].map((spot) => project(spot, side, away, tile)) as [Spot, Spot];
  const middle: Spot = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
  const tries = [0, 4, 8, 12, 16, 20].flatMap((further) =>
    [0, 3, -3, 6, -6, 10, -10, 15, -15, 20, -20].map((shift) => {
      const mark = sawFigure(middle, { ...parts, whole }, { turn, sizes: type });
      const off = textSize(mark)[1] / 2 + beyond + further;
      return { ...mark, at: move(move(middle, out, off), out + Math.PI / 2, shift) };
    }),
  );
  const gapTo = (other: Taken) => (other.turn === turn ? apart.alike : apart.crosswise);
  const free = tries.filter(
    (one) =>
      !overlap(textBox(one), tile, apart.alike) &&
      !taken.some((other) => overlap(textBox(one), other.box, gapTo(other))),
  );
  const isCrossed = (one: FigureMark) =>
    lines.some(([from, to]) => segmentMeets(from, to, textBox(one), clear));
  const offOf = (one: FigureMark) =>
    Math.abs((one.at[0] - middle[0]) * Math.cos(out) + (one.at[1] - middle[1]) * Math.sin(out));
  const [best] = free;
  if (!best) return tries[0]!;
  const beside = free.filter(
    (one) =>
      offOf(one) < offOf(best) + 0.1 && Math.hypot(one.at[0] - middle[0], one.at[1] - middle[1]) < farthest,
  );
  return beside.find((one) => !isCrossed(one)) ?? best;
}

/** The size at the middle of a curve where it is measured, its figure in the line; undefined where the piece is too small for it. */
function sizeInPlace(size: CutSize, scale: Scale, tile: Box, units: Notation): readonly Mark[] | undefined {
  if (size.what !== 'middleLength') return undefined;
  const [a, b] = size.at.map((point) => toPaper(scale, point)) as [Spot, Spot];
  const at: Spot = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
  const words = sawFigure(at, figure(size.saw, units), { sizes: inPlaceFigure });
  const [wide, high] = textSize(words);
  const upright = Math.abs(b[1] - a[1]) > Math.abs(b[0] - a[0]);
  const [along, across] = upright ? [high, wide] : [wide, high];
  const room = upright ? 2 * Math.min(at[0] - tile.left, tile.right - at[0]) : tile.top - tile.bottom;
  const rest = Math.hypot(b[0] - a[0], b[1] - a[1]) / 2 - along / 2 - beyond;
  if (rest < 1 || room < across + 2 * beyond) return undefined;
  const part = (end: Spot) => path([end, move(end, angleTo(end, at), rest)], 'dimension');
  const slash = (end: Spot) => path([move(end, Math.PI / 4, 1.25), move(end, Math.PI / 4, -1.25)], 'slash');
  return [part(a), part(b), slash(a), slash(b), words];
}

/** Type of a size inside the piece, where there is less room, in points: whole number and fraction. */
const inPlaceFigure = [16, 13] as const;

/** Up to eight sizes outside the tile, each from its factory edge, and those at the middle of a curve inside it. */
export function sizeMarks(cut: Cut, tile: TileSides, scale: Scale, units: Notation): readonly Mark[] {
  const marks: Mark[] = [];
  const taken: Taken[] = [];
  const printed = printedSizes(cut);
  const onPaper = (points: Ring) => boxOf(points.map((point) => toPaper(scale, point)));
  const own = onPaper(tileRing(tile));
  // The centre of a circle may lie off the tile, and its sizes with it.
  const round = onPaper([...tileRing(tile), ...printed.flatMap(({ at }) => at)]);
  const inPlace = new Map(printed.map((size) => [size, sizeInPlace(size, scale, round, units)] as const));
  marks.push(...[...inPlace.values()].flatMap((one) => one ?? []));
  const outside = { ...cut, sizes: printed.filter((size) => !inPlace.get(size)) };
  const sizes = placeSizes(outside, scale, own);
  const words = new Map<CutSize, FigureMark>();
  for (const placed of sizes) {
    const lines = sizes.filter((other) => other !== placed).flatMap((other) => extensionsOf(other, round));
    const mark = figureMark(placed, round, units, taken, lines);
    taken.push({ box: textBox(mark), turn: mark.turn });
    words.set(placed.size, mark);
  }
  const figures = taken.map(({ box }) => box);
  // Read aloud, a card gives its sizes in the order of the cut.
  const inOrder = printed.flatMap((size) => words.get(size) ?? []);
  return [...marks, ...inOrder, ...sizes.flatMap((placed) => lineMarks(placed, round, figures))];
}
