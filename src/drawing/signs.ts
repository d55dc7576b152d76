import { boxRound, corners } from './boxes.ts';
import type { Mark, Spot } from './Mark.ts';
import { path, sizes, text } from './text.ts';
import { textWidth } from './textWidth.ts';

const along = ([x, y]: Spot, angle: number, by: number): Spot => [
  x + Math.cos(angle) * by,
  y + Math.sin(angle) * by,
];

/** The angle in radians from one spot to another. */
export function angleTo(a: Spot, b: Spot): number {
  return Math.atan2(b[1] - a[1], b[0] - a[0]);
}

/** A spot moved by a length in a direction in radians. */
export const move = along;

/** A filled triangle of `size` mm whose tip stands at `tip` and points along `angle`. */
export function arrowHead(tip: Spot, angle: number, size = 2.5): Mark {
  const back = along(tip, angle, -size);
  const half = size * 0.35;
  const ring = [tip, along(back, angle + Math.PI / 2, half), along(back, angle - Math.PI / 2, half)];
  return { mark: 'area', rings: [ring], fill: 'ink' };
}

/** A shaft with a head at its end. */
export function arrow(from: Spot, to: Spot, size = 3): readonly Mark[] {
  const angle = angleTo(from, to);
  return [path([from, along(to, angle, -size * 0.8)], 'thick'), arrowHead(to, angle, size)];
}

/** A letter or two in a circle, as at the end of a chalk line. */
export function flag(centre: Spot, letters: string, radius = 3): readonly Mark[] {
  return [
    { mark: 'circle', centre, radius, line: 'slash', fill: 'paper' },
    text(centre, letters, { size: sizes.note, weight: 700, clear: 'none' }),
  ];
}

/** How wide and high a word with its box is, in mm. */
export function boxedSize(word: string, size: number = sizes.note): readonly [width: number, height: number] {
  return [textWidth(word, size, 400) + 2.4, size * 0.353 + 1.6];
}

/** A word in a box, on white ground over whatever lines are there. */
export function boxedWord(centre: Spot, word: string, size: number = sizes.note): readonly Mark[] {
  const ring = corners(boxRound(centre, ...boxedSize(word, size)));
  return [
    { mark: 'area', rings: [ring], line: 'dimension', fill: 'paper', over: true },
    text(centre, word, { size, clear: 'none' }),
  ];
}

/** A thin line from a dot to where the words are. */
export function leader(from: Spot, to: Spot): readonly Mark[] {
  return [path([from, to], 'leader'), { mark: 'circle', centre: from, radius: 0.5, fill: 'ink' }];
}

/** An X whose arms are `arm` mm long. */
export function cross(centre: Spot, arm: number): readonly Mark[] {
  return [1, 3].map((eighth) => {
    const angle = (eighth * Math.PI) / 4;
    return path([along(centre, angle, arm), along(centre, angle, -arm)], 'waste');
  });
}

/** A box to tick, `side` mm. */
export function tickBox([x, y]: Spot, side = 7): Mark {
  return { mark: 'area', rings: [[[x, y], [x + side, y], [x + side, y + side], [x, y + side]]], line: 'box' }; // biome-ignore format: a box on a line
}
