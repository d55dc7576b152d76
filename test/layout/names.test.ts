import { describe, expect, test } from 'vitest';
import type { StartWish } from '../../src/job/Job.ts';
import { layOut } from '../support/layOut.ts';
import { jobOf, rectangle, surfaceOf, ticks } from '../support/surfaceOf.ts';

const job = jobOf(ticks('11 13/16 in'), ticks('11 13/16 in'), ticks('3/16 in'));

/** Names of the pieces of a room of this width, by their column and row counted from the lower left. */
function namesIn(width: number, along: StartWish, pattern = {}) {
  const surface = surfaceOf(rectangle(width, ticks('98 in')), { start: { along }, pattern });
  const { pieces } = layOut(job, surface).layout;
  return pieces.map(({ id }) => id).sort();
}

const wishes: [string, StartWish][] = [
  ['a fixed start', { kind: 'cut', size: ticks('8 in'), at: 'D-A' }],
  ['the best start', { kind: 'best' }],
];

describe('correcting one wall', () => {
  test.each(wishes)('by 3/16 in renames nothing with %s', (_, along) => {
    const width = ticks('124 in');
    expect(namesIn(width + ticks('3/16 in'), along)).toEqual(namesIn(width, along));
  });

  test.each(wishes)('by a tile adds names and takes none away with %s', (_, along) => {
    const [before, after] = [ticks('124 in'), ticks('136 in')].map((width) => namesIn(width, along));
    const lost = along.kind === 'best' ? [] : before!.filter((id) => !after!.includes(id));
    expect(after!.length).toBeGreaterThan(before!.length);
    expect(lost.length).toBeLessThanOrEqual(before!.length / 2);
  });
});

describe('names', () => {
  const { pieces, chalk } = layOut(job, surfaceOf(rectangle(ticks('124 in'), ticks('98 in')))).layout;

  test.each([
    ['K', 1, 1],
    ['L', -1, 1],
    ['M', -1, -1],
    ['N', 1, -1],
  ])('%s is the quarter whose pieces lie %i, %i from the crossing', (letter, right, up) => {
    const own = pieces.filter(({ id }) => id.startsWith(letter));
    const sides = own.map(({ fullTile: [low, , high] }) => [
      Math.sign(low![0] + high![0] - 2 * chalk.crossing[0]),
      Math.sign(low![1] + high![1] - 2 * chalk.crossing[1]),
    ]);
    expect(own.length).toBeGreaterThan(0);
    expect(sides.every(([x, y]) => x === right && y === up)).toBe(true);
  });

  test('are short enough for a wax pencil', () => {
    expect(pieces.every(({ id }) => /^[KLMN]\d{1,2}-\d{1,2}b?$/.test(id))).toBe(true);
  });

  test('begin at the crossing', () => expect(chalk.firstPiece).toBe('K1-1'));

  test('of both legs of a cut tile differ by a letter', () => {
    const corners = [
      [0, 0],
      [ticks('60 in'), 0],
      [ticks('60 in'), ticks('60 in')],
      [ticks('32 in'), ticks('60 in')],
      [ticks('32 in'), ticks('26 in')],
      [ticks('28 in'), ticks('26 in')],
      [ticks('28 in'), ticks('60 in')],
      [0, ticks('60 in')],
    ] as const;
    const surface = surfaceOf(corners, { start: { along: { kind: 'cut', size: ticks('9 in'), at: 'H-A' } } });
    const ids = layOut(job, surface).layout.pieces.map(({ id }) => id);
    const seconds = ids.filter((id) => id.endsWith('b'));
    expect(seconds.length).toBeGreaterThan(0);
    expect(seconds.every((id) => ids.includes(id.slice(0, -1)))).toBe(true);
  });
});
