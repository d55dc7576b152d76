import highs from 'highs';
import { describe, expect, test } from 'vitest';
import { makeCuts } from '../../src/cuts/makeCuts.ts';
import { coverProgram } from '../../src/tiles/coverProgram.ts';
import { makeTilePlans } from '../../src/tiles/makeTilePlans.ts';
import { costOf } from '../../src/tiles/Prices.ts';
import type { TilePlan } from '../../src/tiles/TilePlan.ts';
import { judgeEdges } from '../cuts/support/judgeEdges.ts';
import { chance } from '../support/chance.ts';
import { layOut } from '../support/layOut.ts';
import { cover } from './support/cover.ts';
import { FAMILIES, familyRoom } from './support/familyRoom.ts';
import { judgePile } from './support/judgePile.ts';
import { judgePlan } from './support/judgePlan.ts';
import { judgePrices, judgeSum } from './support/judgePrices.ts';
import { rulesOf } from './support/rulesOf.ts';
import { seedsOf } from './support/seedsOf.ts';
import { tilesByForce } from './support/tilesByForce.ts';

const LONG = process.env.LONG === '1';
const solver = await highs();

function planOf(family: string, seed: number, largest?: number) {
  const { job, surface } = familyRoom(family, seed, largest);
  const { layout } = layOut(job, surface);
  const cuts = makeCuts(job, layout);
  const plan = makeTilePlans(job, [layout], [cuts]).field!;
  const small = { ...job, offcuts: { ...job.offcuts, plan: 'smallestPile' as const } };
  const { fewestTiles, smallestPile } = plan.plans!;
  // With as small a pile it is the same plan.
  const other = smallestPile.pile < fewestTiles.pile ? [makeTilePlans(small, [layout], [cuts]).field!] : [];
  const faults = [plan, ...other].flatMap((one) => [
    ...judgePlan(layout, cuts, one, rulesOf(job)),
    ...judgeSum(one),
    ...judgePile(layout, one),
  ]);
  faults.push(...judgeEdges(layout, cuts));
  // Some floors have so many tiles that trying them all takes a second: one room in five is enough.
  if (!['diagonal', 'herringbone', 'hexagon'].includes(family) || seed % 5 === 0)
    faults.push(...judgePrices(plan, tilesByForce(layout, rulesOf(job))));
  return { job, layout, plan, faults: faults.map((fault) => `room ${seed}: ${fault}`) };
}

/** Share of rooms in which the plan must be proved, by family. */
const PROVED = {
  straight: 0.99,
  'half bond': 0.99,
  'third plank': 0.99,
  diagonal: 0.99,
  herringbone: 0.95,
  hexagon: 0.95,
};

describe('the fewest tiles of rooms to 300 sq ft, half of them out of square', () => {
  const rooms = seedsOf(LONG ? 600 : 50);

  test.each(Object.entries(PROVED))(
    '%s: can be sawn, no tile holds more than 1 at the prices, which add up to the bound: that is the plan in %s of the rooms and else one less',
    (family, share) => {
      const made = rooms.map((seed) => planOf(family, seed));
      expect(made.flatMap(({ faults }) => faults)).toEqual([]);
      const gaps = made.map(({ plan }) => plan.needed - plan.bound);
      expect(Math.max(...gaps)).toBeLessThanOrEqual(1);
      expect(gaps.filter((gap) => gap === 0).length).toBeGreaterThanOrEqual(Math.floor(share * rooms.length));
      expect(made.every(({ plan }, i) => plan.proved === (gaps[i] === 0))).toBe(true);
      if (LONG)
        tell(
          family,
          made.map(({ plan }) => plan),
        );
    },
    LONG ? 3_600_000 : 60_000,
  );
});

/** Figures of the long test, so that its parts can be added up. */
function tell(family: string, plans: readonly TilePlan[]): void {
  const sum = (of: (plan: TilePlan) => number) => plans.reduce((total, plan) => total + of(plan), 0);
  console.log(
    `${family}: ${plans.length} rooms, ${sum(({ proved }) => (proved ? 1 : 0))} proved, ` +
      `gap ${sum(({ needed, bound }) => needed - bound)}, ${sum(({ needed }) => needed)} tiles; smallest pile: ` +
      `${sum(({ plans }) => plans!.smallestPile.needed)} tiles, piles ` +
      `${sum(({ plans }) => plans!.fewestTiles.pile)} and ${sum(({ plans }) => plans!.smallestPile.pile)}`,
  );
}

describe('small rooms, all tiles tried one by one', () => {
  const seeds = seedsOf(LONG ? 100 : 6).map((seed) => 1000 + seed);

  test.each(Object.keys(FAMILIES))(
    '%s: no tile holds more than 1 at these prices, and the solver finds no plan under the bound',
    (family) => {
      for (const seed of seeds) {
        const { job, layout, plan } = planOf(family, seed, 90);
        const forced = tilesByForce(layout, rulesOf(job));
        expect(judgePrices(plan, forced)).toEqual([]);
        const counts = forced.alike.map((names) => names.length);
        const least =
          plan.whole + Math.round(solver.solve(cover(counts, forced.sets, 'whole')).ObjectiveValue);
        expect(plan.bound).toBeLessThanOrEqual(least);
        expect(plan.needed).toBeGreaterThanOrEqual(least);
      }
    },
    LONG ? 3_600_000 : 60_000,
  );
});

describe('the programme of covering', () => {
  test('comes to what a general solver comes to, on random columns', () => {
    const { below } = chance(20270308);
    for (let round = 0; round < 40; round++) {
      const counts = Array.from({ length: 2 + below(12) }, () => 1 + below(9));
      const columns = Array.from({ length: below(40) }, () =>
        Array.from({ length: 2 + below(3) }, () => below(counts.length)),
      );
      const program = coverProgram(counts, []);
      for (const column of columns) program.add(column);
      program.solve({ left: 10_000 });
      const all = [...counts.map((_, id) => [id]), ...columns];
      const value = solver.solve(cover(counts, all, 'parts')).ObjectiveValue;
      expect(Math.abs(costOf(program.prices(), counts) - value)).toBeLessThan(0.002);
    }
  });
});
