import { describe, expect, test } from 'vitest';
import type { Point } from '../../../src/geometry/index.ts';
import type { Candidate } from '../../../src/layout/Layout.ts';
import type { Choice } from '../../../src/layout/start/Choice.ts';
import type { Scored } from '../../../src/layout/start/StartQuestion.ts';
import { webPrice, withoutWebs } from '../../../src/layout/start/withoutWebs.ts';
import { START_TOLERANCE } from '../../../src/trade/index.ts';

const MM = 320;
const open = { what: 'searched' } as Choice['along'];
const centred = { what: 'tile' } as Choice['along'];
const ground = { tolerance: START_TOLERANCE.value, flat: MM / 2 };
const anywhere = { beside: (origin: Point, [u, v]: Point) => at([origin[0] + u, origin[1] + v]) };

function at(origin: Point): Choice {
  return { origin, along: open, across: centred, shift: 0 };
}

/** A start whose smallest piece is 100 mm of 600 and shrinks by as much as it is moved; a web is too thin until it has come so far. */
const freedAt =
  (far: number, over: (x: number) => Partial<Candidate> = () => ({})) =>
  (choice: Choice): Scored => {
    const x = choice.origin[0] / MM;
    const smallest = (100 - Math.abs(x)) * MM;
    const counts = { slivers: 0, thin: 0, underHalf: 4, hardCuts: 3, shift: 0, reason: [] };
    const webFaults = x >= far ? 0 : 1;
    const candidate = { ...counts, smallest, smallestShare: smallest / (600 * MM), webFaults, ...over(x) };
    return { choice, candidate: { ...candidate, origin: choice.origin } as unknown as Candidate };
  };

describe('a start beside which a web is too thin', () => {
  test('is moved by the fewest saw steps that free it, within what the smallest piece may lose for tiles, and says the price', () => {
    const lay = freedAt(2);
    const { choice, candidate } = withoutWebs(lay(at([0, 0])), ground, anywhere, lay);
    expect(choice.origin).toEqual([2 * MM, 0]);
    expect(candidate.reason).toEqual([
      {
        code: 'start.withoutWeb',
        figures: { beforeCount: 1, afterCount: 0, before: 100 * MM, size: 98 * MM },
      },
    ]);
  });

  test('stays where more would be lost, where something before it becomes worse, and where it balances a run', () => {
    const [far, worse] = [freedAt(4), freedAt(2, (x) => ({ underHalf: x === 0 ? 4 : 5 }))];
    for (const lay of [far, worse])
      expect(withoutWebs(lay(at([0, 0])), ground, anywhere, lay).choice.origin).toEqual([0, 0]);
    const lay = freedAt(1);
    const balanced = lay({ ...at([0, 0]), along: centred });
    expect(withoutWebs(balanced, ground, anywhere, lay)).toBe(balanced);
  });

  test('has its price told by the best start laid that is free of it', () => {
    const lay = freedAt(4);
    const laid = [0, 9, 6, 5].map((x) => lay(at([x * MM, 0])));
    const [price] = webPrice(laid[0]!, laid);
    expect(price!.reason.at(-1)!.figures).toEqual({
      beforeCount: 1,
      afterCount: 0,
      before: 100 * MM,
      size: 95 * MM,
    });
    expect(webPrice(laid[1]!, laid)).toEqual([]);
  });
});
