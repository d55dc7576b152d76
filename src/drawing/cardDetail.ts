import type { Cut } from '../cuts/Cut.ts';
import type { System } from '../measure/index.ts';
import { type Box, boxRound, boxRoundAll, corners, grow, overlap, segmentMeets } from './boxes.ts';
import { arcMarks, drillMarks, edgeMarks } from './cardMarks.ts';
import { clipMarks } from './clipMarks.ts';
import type { Mark, Spot } from './Mark.ts';
import { markBounds } from './markBounds.ts';
import { lengthOn, mmPerTick, type Scale, toPaper } from './Scale.ts';
import { type Feature, smallFeature } from './smallFeatures.ts';
import { path, sizes, text } from './text.ts';

/** What is smaller than this on paper is not seen in its place; what is shown larger is at least so large where it fits, in mm. */
const least = 3;
const wanted = 4;
/** Sides of the square in which it is shown, the first that leaves the drawing as large as a card holds; the share of it that it may take, and the words under it, in mm. */
const sides = [20, 17, 14] as const;
const share = 0.8;
const words = 4;
/** Scales at which it is shown, the smallest first: 1:5 up to 2:1. */
const scales = { inches: [4, 2, 1, 0.5], mm: [5, 2, 1, 0.5] } as const;
/** What a card holds, and what is added round its drawing, in mm. */
export const cardSpace = { widthMm: 68, heightMm: 58 } as const;
const edge = 1;
/** How far it keeps off all else, and the grid of its places, in mm. */
const off = 1.5;
const grid = 2;

const sayRatio = (ratio: number): string => (ratio < 1 ? `${1 / ratio}:1` : `1:${ratio}`);

/** The scale that shows a feature large enough, or as large as a square holds it whole. */
function detailRatio({ size, box }: Feature, system: System, side: number): number {
  const extent = Math.max(box.right - box.left, box.top - box.bottom);
  const whole = scales[system].filter((ratio) => extent * mmPerTick(ratio) <= side * share);
  return whole.find((ratio) => size * mmPerTick(ratio) >= wanted) ?? whole.at(-1) ?? scales[system][0];
}

/** The square in which a feature is shown, and the part of the piece that it shows, both in mm of paper. */
interface Detail {
  readonly ratio: number;
  readonly square: Box;
  readonly about: Box;
}

const middleOf = ({ left, right, bottom, top }: Box): Spot => [(left + right) / 2, (bottom + top) / 2];
/** The square with the words under it. */
const frameOf = (square: Box): Box => ({ ...square, bottom: square.bottom - words });
const nearestOn = ([x, y]: Spot, box: Box): Spot => [
  Math.min(Math.max(x, box.left), box.right),
  Math.min(Math.max(y, box.bottom), box.top),
];
const outline = (box: Box): Mark => ({ mark: 'area', rings: [corners(box)], line: 'thin' });

/** The place for a square that makes the drawing least larger, clear of all marks and with a line to it over no words. */
function placeFor(about: Box, side: number, marks: readonly Mark[]): Box | undefined {
  const bounds = markBounds(marks);
  const taken = marks.map((mark) => grow(markBounds([mark]), off));
  const written = marks.filter(({ mark }) => mark === 'text' || mark === 'figure');
  const figures = written.map((mark) => markBounds([mark]));
  const from = middleOf(about);
  const reach = grow(bounds, side / 2 + off + words);
  const steps = (low: number, high: number) =>
    Array.from({ length: Math.ceil((high - low) / grid) + 1 }, (_, i) => low + i * grid);
  const cost = (square: Box) => {
    const { left, right, bottom, top } = boxRoundAll([bounds, frameOf(square)]);
    const [x, y] = middleOf(square);
    return right - left + top - bottom + Math.hypot(x - from[0], y - from[1]) / 20;
  };
  const places = steps(reach.left, reach.right)
    .flatMap((x) => steps(reach.bottom, reach.top).map((y) => boxRound([x, y], side, side)))
    .filter((square) => !taken.some((box) => overlap(frameOf(square), box)))
    .filter((square) => !figures.some((box) => segmentMeets(from, nearestOn(from, square), box, 0.5)));
  return places.map((square) => ({ square, cost: cost(square) })).sort((a, b) => a.cost - b.cost)[0]?.square;
}

/** The largest square with which the drawing still fits a card, else the first that finds a place. */
function detailOf(small: Feature, scale: Scale, system: System, marks: readonly Mark[]): Detail | undefined {
  const made = sides.flatMap((side): readonly Detail[] => {
    const ratio = detailRatio(small, system, side);
    const shown = lengthOn(scale, side / mmPerTick(ratio));
    const about = boxRound(toPaper(scale, middleOf(small.box)), shown, shown);
    const square = placeFor(about, side, marks);
    return square ? [{ ratio, square, about }] : [];
  });
  const fits = ({ square }: Detail) => {
    const { left, right, bottom, top } = boxRoundAll([markBounds(marks), frameOf(square)]);
    return right - left + 2 * edge <= cardSpace.widthMm && top - bottom + 2 * edge <= cardSpace.heightMm;
  };
  return made.find(fits) ?? made[0];
}

/**
 * A step or a bite of a cut that is too small to be seen at the scale of its card, shown larger in a square beside it with the scale of that,
 * and a line to the place on the piece. None where all can be seen, or where there is no room.
 */
export function cardDetail(cut: Cut, scale: Scale, marks: readonly Mark[], system: System): readonly Mark[] {
  const small = smallFeature(cut, least / scale.paperMmPerTick);
  const detail = small && detailOf(small, scale, system, marks);
  if (!detail) return [];
  const { ratio, square, about } = detail;
  const at = middleOf(square);
  const large: Scale = { ...scale, ratio, paperMmPerTick: mmPerTick(ratio), origin: [0, 0], spot: [0, 0] };
  const zero = toPaper(large, middleOf(small.box));
  const inPlace: Scale = { ...large, spot: [at[0] - zero[0], at[1] - zero[1]] };
  const piece = [...edgeMarks(cut, inPlace), ...arcMarks(cut, inPlace), ...drillMarks(cut, inPlace)];
  const end = nearestOn(middleOf(about), square);
  return [
    outline(about),
    path([nearestOn(end, about), end], 'leader'),
    outline(square),
    ...clipMarks(piece, square),
    text([at[0], square.bottom - words / 2], sayRatio(ratio), { size: sizes.smallest, clear: 'none' }),
  ];
}
