import type { Mark, Spot } from './Mark.ts';
import { angleTo, move } from './signs.ts';
import { path, sizes, text } from './text.ts';
import { textWidth } from './textWidth.ts';

/** Half the length of a slash, how far an extension line stays off and runs past, all in mm. */
const slash = 1.25;
const off = 1;
const past = 1.5;

function slashes(at: Spot, angle: number): Mark {
  return path([move(at, angle + Math.PI / 4, slash), move(at, angle + Math.PI / 4, -slash)], 'slash');
}

/** The line of a dimension with its extension lines and slashes, `away` mm to the left of a → b (right when negative). */
export function dimensionLine(a: Spot, b: Spot, away: number): readonly Mark[] {
  const angle = angleTo(a, b);
  const out = angle + (Math.sign(away) || 1) * (Math.PI / 2);
  const size = Math.abs(away);
  const [from, to] = [move(a, out, size), move(b, out, size)];
  const extension = (spot: Spot) => path([move(spot, out, off), move(spot, out, size + past)], 'dimension');
  const extensions = size > off ? [extension(a), extension(b)] : [];
  return [
    ...extensions,
    path([move(from, angle, -past), move(to, angle, past)], 'dimension'),
    slashes(from, angle),
    slashes(to, angle),
  ];
}

/** A dimension with its size written beyond the line; upright lines carry their words turned. */
export function dimension(
  a: Spot,
  b: Spot,
  away: number,
  words: string,
  size: number = sizes.note,
): readonly Mark[] {
  const angle = angleTo(a, b);
  const out = angle + (Math.sign(away) || 1) * (Math.PI / 2);
  const middle: Spot = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
  const upright = Math.abs(Math.cos(angle)) < 0.3;
  const level = Math.abs(Math.sin(angle)) < 0.3;
  const sideways = upright || level ? 0 : textWidth(words, size) / 2;
  const gap = size * 0.353 * 0.5 + 1 + sideways;
  return [
    ...dimensionLine(a, b, away),
    text(move(middle, out, Math.abs(away) + gap), words, { size, turn: upright ? 90 : 0 }),
  ];
}
