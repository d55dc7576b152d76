import { describe, expect, test } from 'vitest';
import { makeCuts } from '../../src/cuts/makeCuts.ts';
import type { Job } from '../../src/job/Job.ts';
import { readJob } from '../../src/job/readJob.ts';
import { cutClasses } from '../../src/tiles/cutClasses.ts';
import { fewestTiles } from '../../src/tiles/fewestTiles.ts';
import { makeTilePlans } from '../../src/tiles/makeTilePlans.ts';
import { nearMates } from '../../src/tiles/nearMates.ts';
import { pileOf, waitOf } from '../../src/tiles/pileOf.ts';
import type { ServedTile } from '../../src/tiles/ServedTile.ts';
import { servePieces } from '../../src/tiles/servePieces.ts';
import { tileRules } from '../../src/tiles/tileRules.ts';
import { workOrder } from '../../src/tiles/workOrder.ts';
import { inch } from '../cuts/support/inches.ts';
import { type Floor, layFloor, rectangle } from '../cuts/support/layFloor.ts';
import { testJob } from '../cuts/support/testJob.ts';
import { layOut } from '../support/layOut.ts';
import { FAMILIES, familyRoom } from './support/familyRoom.ts';

const gap = inch(1 / 4);
const joint = inch(1 / 8);

/** One row of 12 in tiles between cuts of a width at its left and right ends. */
function row(left: number, right: number): Floor {
  return {
    tile: { length: inch(12), width: inch(12) },
    joint,
    gap,
    outline: rectangle(2 * gap + left + right + inch(36) + 4 * joint, 2 * gap + inch(12)),
    origin: [gap + left + joint, gap],
  };
}

function planOf(floor: Floor, given: Partial<Job>) {
  const job = testJob(given, { length: floor.tile.length, width: floor.tile.width });
  const layout = layFloor(floor);
  return makeTilePlans(job, [layout], [makeCuts(job, layout)]).field!;
}

describe('an offcut too narrow is not kept', () => {
  // 12 in less 2 mm of blade less 11 in leaves 59/64 in (arithmetic).
  const floor = row(inch(11), inch(0.9));

  test.each([
    [0, 4],
    [0.92, 4],
    [1, 5],
  ])('under %f in: %i tiles', (narrowest, needed) => {
    const plan = planOf(floor, { offcuts: { plan: 'fewestTiles', narrowest: inch(narrowest) } });
    expect(plan).toMatchObject({ cut: 2, needed, bound: needed });
  });

  test('but a narrow piece comes out of a wide one', () => {
    const plan = planOf(row(inch(6), inch(0.9)), { offcuts: { plan: 'fewestTiles', narrowest: inch(1) } });
    expect(plan).toMatchObject({ cut: 2, needed: 4 });
  });
});

describe('what breaks is counted by how it is sawn', () => {
  const SMALL = `title: Small
revision: {date: 2027-03-01}
tile: {field: {read: 12 in x 12 in}}
joint: 1/8 in
floor: {walls: {A-B: 8 ft, B-C: 8 ft, C-D: 8 ft, D-A: 8 ft}}
`;
  const breakage = (waste: string) => readJob(`${SMALL}${waste}`, 'job.yaml', 'x').job!.waste.breakage;

  test('a rip breaks less often than a U (common practice, no source)', () => {
    expect(breakage('').straight).toBeLessThan(breakage('').u);
  });

  test('one figure stands for all cuts', () => {
    expect(new Set(Object.values(breakage('waste: {breakage: 4 %}')))).toEqual(new Set([0.04]));
  });

  test('a map changes some of them', () => {
    const given = breakage('waste: {breakage: {u: 20 %}}');
    expect(given).toEqual({ ...breakage(''), u: 0.2 });
  });
});

describe('pieces out of one tile are set soon after one another', () => {
  const whenOf = (tiles: readonly ServedTile[]) => tiles.map((slots) => slots.map(({ when }) => when));

  test.each(Object.keys(FAMILIES))('%s: no wait and no pile grows, and in all they wait less', (family) => {
    const sums = { wait: 0, plainWait: 0 };
    for (let seed = 0; seed < 12; seed++) {
      const { job, surface } = familyRoom(family, seed);
      const { layout } = layOut(job, surface);
      const classes = cutClasses(job.tiles[0]!, [layout], [makeCuts(job, layout)]);
      const rules = tileRules(classes, { kerf: job.saw.kerf, narrowest: job.offcuts.narrowest });
      const { tiles } = fewestTiles(rules);
      const order = workOrder(
        classes,
        layout.pieces.map(({ id }) => id),
      );
      const [near, plain] = [whenOf(nearMates(rules, tiles, order)), whenOf(servePieces(tiles, order))];
      expect(waitOf(near)).toBeLessThanOrEqual(waitOf(plain));
      expect(pileOf(near)).toBeLessThanOrEqual(pileOf(plain));
      sums.wait += waitOf(near);
      sums.plainWait += waitOf(plain);
    }
    // Straight rooms share few tiles, so that there may be nothing to gain.
    if (family !== 'straight') expect(sums.wait).toBeLessThan(sums.plainWait);
  });
});

describe('the smallest pile', () => {
  test('is chosen where the job says so, and both plans are told either way', () => {
    const { job, surface } = familyRoom('diagonal', 2);
    const { layout } = layOut(job, surface);
    const cuts = makeCuts(job, layout);
    const by = (plan: Job['offcuts']['plan']) =>
      makeTilePlans({ ...job, offcuts: { ...job.offcuts, plan } }, [layout], [cuts]).field!;
    const [fewest, small] = [by('fewestTiles'), by('smallestPile')];
    expect({ ...fewest.plans, chosen: '' }).toEqual({ ...small.plans, chosen: '' });
    expect([fewest.needed, fewest.pile]).toEqual(Object.values(fewest.plans!.fewestTiles));
    expect([small.needed, small.pile]).toEqual(Object.values(fewest.plans!.smallestPile));
    expect(small.pile).toBeLessThan(fewest.pile!);
    expect(small.bound).toBe(fewest.bound);
  });
});
