import type { Drawing, DrawOptions } from './Drawing.ts';
import type { Mark, Spot } from './Mark.ts';
import { trimmed } from './markBounds.ts';
import { penSvg } from './penSvg.ts';
import { angleTo, move } from './signs.ts';
import { path, sizes, text } from './text.ts';

export type MeasureShape = 'rectangle' | 'L';

/** Rooms without a size, in mm of paper, walked from A with the room on the left, and the diagonals to measure. */
const rooms: Readonly<
  Record<MeasureShape, { readonly corners: readonly Spot[]; readonly diagonals: readonly string[] }>
> = {
  rectangle: { corners: [[0, 0], [120, 0], [120, 76], [0, 76]], diagonals: ['AC', 'BD'] }, // biome-ignore format: corners on a line
  L: { corners: [[0, 0], [130, 0], [130, 50], [64, 50], [64, 102], [0, 102]], diagonals: ['AC', 'AD', 'AE', 'CE'] }, // biome-ignore format: corners on a line
};

/** Room to write a length, in mm. */
const blank = 28;

/** What is measured, and a line to write it on, centred on a spot. */
function blankFor(at: Spot, words: string, turn: 0 | 90): readonly Mark[] {
  const along = turn === 90 ? Math.PI / 2 : 0;
  const start = move(at, along, -blank / 2 - 5);
  const line: Spot = move(at, along + Math.PI / 2, -2.2);
  return [
    text(start, words, { size: sizes.note, weight: 700, turn, clear: 'all' }),
    path([move(line, along, -blank / 2), move(line, along, blank / 2)], 'thin'),
  ];
}

function letter(corners: readonly Spot[], i: number): string {
  return String.fromCharCode(65 + (i % corners.length));
}

function wall(corners: readonly Spot[], i: number): readonly Mark[] {
  const [a, b] = [corners[i]!, corners[(i + 1) % corners.length]!];
  const out = angleTo(a, b) - Math.PI / 2;
  const upright = a[0] === b[0];
  const at = move([(a[0] + b[0]) / 2, (a[1] + b[1]) / 2], out, 5);
  const away = move(move(a, out, 3), angleTo(a, b), -3);
  return [
    path([a, b], 'wall'),
    ...blankFor(at, `${letter(corners, i)}-${letter(corners, i + 1)}`, upright ? 90 : 0),
    text(away, letter(corners, i), { weight: 700 }),
  ];
}

/** A diagonal with its blank a little off the middle, so that the blanks of two that cross stand apart. */
function diagonal(corners: readonly Spot[], name: string, share: number): readonly Mark[] {
  const [a, b] = [...name].map((one) => corners[one.charCodeAt(0) - 65]!) as [Spot, Spot];
  const at: Spot = [a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share];
  return [path([a, b], 'fullTile'), text(at, `${name[0]}-${name[1]}`, { weight: 700, clear: 'all' })];
}

/** A blank room for the first visit: letters round it, a line to write each wall's length on, and the diagonals by name. */
export function drawMeasureForm(shape: MeasureShape, options: DrawOptions): Drawing {
  const { corners, diagonals } = rooms[shape];
  const { marks, ...size } = trimmed([
    ...corners.flatMap((_, i) => wall(corners, i)),
    ...diagonals.flatMap((name, i) => diagonal(corners, name, i % 2 === 0 ? 0.62 : 0.42)),
  ]);
  return penSvg(marks, { id: options.id, label: options.label, ratio: null, ...size });
}
