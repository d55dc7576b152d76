import type { Drawing, DrawOptions } from './Drawing.ts';
import { dimensionLine } from './dimension.ts';
import type { Mark, Spot } from './Mark.ts';
import { trimmed } from './markBounds.ts';
import { penSvg } from './penSvg.ts';
import { flag } from './signs.ts';
import { path, sizes, text } from './text.ts';

/** What a small drawing shows the way of. */
export type MeasureHow = 'cornerCheck' | 'baseLine' | 'doorway' | 'obstacle';

const letter = (at: Spot, words: string): Mark =>
  text(at, words, { size: sizes.note, weight: 700, clear: 'all' });

/** A dimension whose size is a number in a circle, as in the table beside it; `away` as of a dimension line. */
function numbered(a: Spot, b: Spot, away: number, number: string): readonly Mark[] {
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const [x, y] = [-(b[1] - a[1]) / length, (b[0] - a[0]) / length];
  const at: Spot = [(a[0] + b[0]) / 2 + x * away, (a[1] + b[1]) / 2 + y * away];
  return [...dimensionLine(a, b, away), ...flag(at, number, 2.6)];
}

const dot = (centre: Spot): Mark => ({ mark: 'circle', centre, radius: 0.9, fill: 'ink' });

/** A corner with a mark on either wall, and the distance between them. */
const cornerCheck: readonly Mark[] = [
  path([[0, 34], [0, 0], [52, 0]], 'wall'), // biome-ignore format: corners on a line
  path([[0, 24], [32, 0]], 'fullTile'), // biome-ignore format: a line on a line
  dot([0, 24]),
  dot([32, 0]),
  ...numbered([0, 0], [0, 24], 6, '1'),
  ...numbered([0, 0], [32, 0], -6, '2'),
  ...flag([18.5, 13.5], '3', 2.6),
  letter([-3.5, -3.5], 'A'),
];

/** A snapped line in a room, with the way along it to a corner and square off it. */
const baseLine: readonly Mark[] = [
  path([[0, 0], [64, 0], [64, 36], [0, 36], [0, 0]], 'wall'), // biome-ignore format: corners on a line
  path([[5, 9], [61, 9]], 'chalk'), // biome-ignore format: a line on a line
  ...flag([5, 9], '0', 2.6),
  ...numbered([5, 9], [64, 9], 7, '1'),
  ...numbered([64, 9], [64, 36], -6, '2'),
  letter([67, 38.5], 'C'),
];

/** A doorway from above: the room below, the door line in the wall, one side cased, one a post. */
const doorway: readonly Mark[] = [
  path([[-34, 0], [0, 0], [0, 16], [-34, 16]], 'wall'), // biome-ignore format: corners on a line
  path([[74, 0], [44, 0], [44, 16], [74, 16]], 'wall'), // biome-ignore format: corners on a line
  path([[-34, 16], [-34, -16]], 'wall'), // biome-ignore format: a line on a line
  path([[0, 8], [44, 8]], 'opening'), // biome-ignore format: a line on a line
  { mark: 'area', rings: [[[-4, -2.5], [0, -2.5], [0, 3], [-4, 3]]], line: 'fixture', fill: 'cut' }, // biome-ignore format: a box on a line
  { mark: 'area', rings: [[[44, 0], [50, 0], [50, 8], [44, 8]]], line: 'fixture', fill: 'hard' }, // biome-ignore format: a box on a line
  ...numbered([-34, -4], [0, -4], -5, '2'),
  ...numbered([0, -4], [44, -4], -5, '3'),
  ...numbered([64, 0], [64, 16], -14, '4'),
  ...numbered([30, 0], [30, 8], -4, '5'),
  ...flag([-9, 8], '6', 2.6),
  ...flag([56, 4], '7', 2.6),
  ...flag([14, 14], '8', 2.6),
  letter([-37.5, -4], 'A'),
];

/** A round and a square thing with their sizes and their distances from two walls. */
const obstacle: readonly Mark[] = [
  path([[0, 40], [0, 0], [96, 0]], 'wall'), // biome-ignore format: corners on a line
  { mark: 'circle', centre: [22, 24], radius: 6.5, line: 'fixture' },
  dot([22, 24]),
  ...numbered([0, 24], [22, 24], 10, '5'),
  ...numbered([22, 0], [22, 24], -11, '5'),
  ...numbered([15.5, 24], [28.5, 24], 13, '1'),
  { mark: 'area', rings: [[[58, 14], [86, 14], [86, 34], [58, 34]]], line: 'fixture' }, // biome-ignore format: a box on a line
  dot([58, 14]),
  ...numbered([58, 34], [86, 34], 5, '2'),
  ...numbered([86, 14], [86, 34], -5, '2'),
  ...numbered([58, 0], [58, 14], 6, '5'),
];

const pictures: Readonly<Record<MeasureHow, readonly Mark[]>> = { cornerCheck, baseLine, doorway, obstacle };

/** How something is measured: a small drawing whose numbers are those of the questions beside it. */
export function drawMeasureHow(what: MeasureHow, options: DrawOptions): Drawing {
  const { marks, ...size } = trimmed(pictures[what]);
  return penSvg(marks, { id: options.id, label: options.label, ratio: null, ...size });
}
