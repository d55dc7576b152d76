import { type Point, translate } from '../geometry/index.ts';
import type { Pattern, PatternTile } from './Pattern.ts';

/**
 * A pattern in two colours that stand in the place of its first tile, every second one of the other colour:
 * along each course and from course to course; where tiles lie and stand by turns, one colour for each.
 */
export function checkered(pattern: Pattern, colours: readonly [string, string]): Pattern {
  const { tiles } = pattern;
  const own = tiles[0]!.tile;
  const coloured = (one: PatternTile, parity: number) =>
    one.tile === own ? { ...one, tile: colours[Math.abs(parity) % 2]! } : one;
  if (tiles.some(({ tile, quarter }) => tile === own && quarter !== tiles[0]!.quarter))
    return { ...pattern, tiles: tiles.map((one) => coloured(one, one.quarter)) };
  return twiceAsLong(pattern, coloured);
}

/** Two repeats side by side as one, each course of repeats a step of one further on where that alternates courses too. */
function twiceAsLong(pattern: Pattern, coloured: (one: PatternTile, parity: number) => PatternTile): Pattern {
  const { a, b, tiles } = pattern;
  const courses = inRows(pattern) ? tiles.length : 1;
  const shift = courses % 2;
  const second: Point = [b[0] + shift * a[0], b[1] + shift * a[1]];
  const at = (step: number) =>
    tiles.map((one, k): PatternTile => {
      const counted = ([ci, cj, c0]: PatternTile['column']) =>
        [2 * ci, cj + shift * ci, c0 + step * ci] as const;
      return {
        ...coloured(one, step + (courses > 1 ? k : 0)),
        ring: one.ring.map((point) => translate(point, [step * a[0], step * a[1]])),
        column: counted(one.column),
        row: counted(one.row),
      };
    });
  return { ...pattern, a: [2 * a[0], 2 * a[1]], b: second, tiles: [...at(0), ...at(1)] };
}

/** Whether each tile of the repeat is a row of its own. */
function inRows({ tiles }: Pattern): boolean {
  return (
    new Set(tiles.map(({ row }) => row[2])).size === tiles.length &&
    tiles.every(({ column }) => column[0] === 1)
  );
}
