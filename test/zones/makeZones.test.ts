import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { makeCuts } from '../../src/cuts/makeCuts.ts';
import type { Job, SurfaceSpec } from '../../src/job/Job.ts';
import { fieldAreaM2 } from '../../src/materials/fieldRuns.ts';
import { makeMaterials } from '../../src/materials/makeMaterials.ts';
import { firstOfWork } from '../../src/zones/firstOfWork.ts';
import { makeZones } from '../../src/zones/makeZones.ts';
import { inch } from '../cuts/support/inches.ts';
import { type Floor, layFloor, rectangle } from '../cuts/support/layFloor.ts';
import { testJob } from '../cuts/support/testJob.ts';

const gap = inch(1 / 4);
const joint = inch(3 / 16);
/** 60 × 96 in of 11 3/4 in tile: five whole tiles across, eight courses; the door is in the lower 60 in side. */
const hall: Floor = {
  outline: rectangle(inch(60), inch(96)),
  gap,
  tile: { length: inch(11.75), width: inch(11.75) },
  joint,
  origin: [gap, gap],
  doors: { 0: 'hall' },
};

function zonesOf(
  floor: Floor = hall,
  wish: SurfaceSpec['zones'] = { kind: 'auto' },
  given: Partial<Job> = {},
) {
  const job = testJob({ joint, ...given }, floor.tile, { zones: wish });
  const layout = layFloor(floor);
  const cuts = makeCuts(job, layout);
  return { job, layout, cuts, zones: makeZones(job, layout, cuts) };
}

const pace = (paceM2PerHour: number) => ({ work: { ...testJob().work, paceM2PerHour } });

describe('the field is parted into zones', () => {
  test('one zone where a working day is enough: 3.7 m² at 1 m² an hour in 8 hours', () => {
    const { zones, layout } = zonesOf();
    expect(zones).toHaveLength(1);
    expect(zones[0]!.pieces).toHaveLength(layout.pieces.length);
    expect(zones[0]!.seam).toBeUndefined();
  });

  test('as many as days where it is not, of about equal area', () => {
    const { zones } = zonesOf(hall, { kind: 'auto' }, pace(0.2));
    expect(zones).toHaveLength(3);
    const areas = zones.map(({ areaM2 }) => areaM2);
    expect(Math.max(...areas) - Math.min(...areas)).toBeLessThan(0.5);
  });

  test('and together as large as the field of the tally', () => {
    const { zones, layout } = zonesOf(hall, { kind: 'auto' }, pace(0.2));
    expect(zones.reduce((sum, { areaM2 }) => sum + areaM2, 0)).toBeCloseTo(fieldAreaM2(layout), 9);
  });

  test('three rows at the door of a 60 in side are 15 pieces (common practice)', () => {
    const { zones } = zonesOf(hall, { kind: 'splits', from: 'hall', at: [inch(36)] });
    expect(zones.map(({ pieces }) => pieces.length)).toEqual([25, 15]);
    expect(zones[1]!.pieces).toContain('K3-3');
  });

  test('the seam lies on the middle of a joint, from wall to wall', () => {
    const [first] = zonesOf(hall, { kind: 'splits', from: 'hall', at: [inch(34)] }).zones;
    const at = gap + 3 * (hall.tile.width + joint) - Math.ceil(joint / 2);
    expect(first!.seam).toEqual([{ from: [0, at], to: [inch(60), at] }]);
  });

  test('a running bond is parted along its courses', () => {
    const wide: Floor = {
      ...hall,
      outline: rectangle(inch(120), inch(60)),
      shift: inch(4),
      doors: { 1: 'hall' },
    };
    const { zones } = zonesOf(wide, { kind: 'count', count: 2 });
    const rows = zones.map(
      ({ pieces }) =>
        new Set(
          pieces.map((id) =>
            id
              .replace(/^[KL]/, '+')
              .replace(/^[MN]/, '-')
              .replace(/\d+-(\d+).*/, '$1'),
          ),
        ),
    );
    expect([...rows[0]!].filter((row) => rows[1]!.has(row))).toEqual([]);
  });
});

describe('the order of work leads out of the room', () => {
  test('the last zone ends at the door, the first is the farthest from it', () => {
    const { zones } = zonesOf(hall, { kind: 'count', count: 2 });
    expect(zones[0]!.pieces).toContain('K1-8');
    expect(zones[1]!.last).toBe('K3-1');
    expect(zones[1]).toMatchObject({ wayOut: 'hall', onlyWayOut: true });
  });

  test('a door at the other end turns the order round', () => {
    const { zones } = zonesOf({ ...hall, doors: { 2: 'yard' } }, { kind: 'count', count: 2 });
    expect(zones[0]!.pieces).toContain('K1-1');
    expect(zones[1]).toMatchObject({ last: 'K3-8', wayOut: 'yard' });
  });

  test('a door in the middle of the long side: its part comes last, between two that are done', () => {
    const outline = [
      [0, 0],
      [60, 0],
      [60, 40],
      [60, 56],
      [60, 96],
      [0, 96],
    ].map(([x, y]) => [inch(x!), inch(y!)] as const);
    const { zones } = zonesOf({ ...hall, outline, doors: { 2: 'hall' } }, { kind: 'count', count: 3 });
    expect(zones[2]!.pieces).toContain('K5-4');
  });

  test('the first piece stands at the chalk crossing, in later zones nearest to it', () => {
    const { zones } = zonesOf({ ...hall, doors: { 2: 'yard' } }, { kind: 'count', count: 2 });
    expect(zones.map(({ first }) => first)).toEqual(['K1-1', 'K1-5']);
  });

  test('where the crossing lies in a later zone, the first zone begins beside the upright line, four courses up', () => {
    const { zones, layout } = zonesOf(hall, { kind: 'count', count: 2 });
    const own = layout.pieces.filter(({ id }) => zones[0]!.pieces.includes(id));
    const up = 4 * (hall.tile.width + joint);
    const [along, across] = [gap - layout.chalk.crossing[0], gap + up - layout.chalk.crossing[1]];
    expect(zones.map(({ first }) => first)).toEqual(['K1-5', 'K1-1']);
    expect(firstOfWork(layout, own)).toEqual({
      firstPiece: 'K1-5',
      guide: { along, across, onJoints: true },
    });
  });

  test('two doorways: neither is the only one unless the job says so', () => {
    const floor = { ...hall, doors: { 0: 'hall', 2: 'yard' } };
    expect(zonesOf(floor).zones[0]!.onlyWayOut).toBe(false);
    expect(
      zonesOf(floor, { kind: 'auto' }, { access: { onlyToilet: false, onlyExit: true } }).zones[0]!
        .onlyWayOut,
    ).toBe(true);
  });
});

describe('what a zone needs', () => {
  test('six hours at a pot life of an hour and a half are four batches', () => {
    const mortar = { ...testJob().products.mortar, coversM2: [2, 3] as const, bagKg: 20 };
    const { zones, layout } = zonesOf(
      hall,
      { kind: 'auto' },
      { ...pace(0.6), products: { ...testJob().products, mortar } },
    );
    const [zone] = zones;
    expect(zone!.hours).toBeCloseTo(fieldAreaM2(layout) / 0.6, 9);
    expect(zone!.mortarKg).toBeCloseTo(fieldAreaM2(layout) * 10, 9);
    expect(zone!.mortarBy).toBe('bag');
    expect(zone!.batches).toBe(Math.ceil(zone!.hours / 1.5));
  });

  test.each([
    ['bag', 2],
    ['notch', 20],
  ] as const)(
    'where the %s rules, all zones together take what the tally counts before it buys more',
    (by, covers) => {
      const mortar = { ...testJob().products.mortar, coversM2: [covers, covers] as const };
      const { job, layout, zones } = zonesOf(
        hall,
        { kind: 'count', count: 3 },
        { products: { ...testJob().products, mortar } },
      );
      const tally = makeMaterials(job, [layout], {}).find(({ what }) => what === 'mortar')!;
      const sum = zones.reduce((total, { mortarKg }) => total + mortarKg, 0);
      expect(zones).toHaveLength(3);
      expect(sum).toBeCloseTo(tally.amount / 1.1, 9);
      expect(zones.map(({ mortarBy }) => mortarBy)).toEqual([by, by, by]);
    },
  );

  test('back-buttered tile takes a quarter more: a bag covers 80 % (common practice)', () => {
    const kg = (backButter: boolean) => {
      const mortar = { ...testJob().products.mortar, coversM2: [2, 3] as const, backButter };
      return zonesOf(hall, { kind: 'auto' }, { products: { ...testJob().products, mortar } }).zones[0]!
        .mortarKg;
    };
    expect(kg(true) / kg(false)).toBeCloseTo(1.25, 9);
  });

  test('under each row the space that should be left, joint, cut and gap, and the cut that takes up a difference', () => {
    const start = gap + inch(7 + 5 / 8) + joint;
    const floor: Floor = {
      ...hall,
      outline: rectangle(inch(0.5 + 2 * (7 + 5 / 8) + 4 * 11.75 + 5 * 0.1875), inch(60)),
      origin: [start, gap],
    };
    const { zones, cuts } = zonesOf(floor);
    const ends = zones[0]!.found.filter(({ row }) => row === 'KL2');
    const number = cuts.cuts.find(({ kind }) => kind === 'rip')!.number;
    expect(ends).toEqual(
      ['D-A', 'B-C'].map((edge) => ({
        edge,
        row: 'KL2',
        expected: gap + inch(7 + 5 / 8) + joint,
        cuts: [number],
      })),
    );
  });
});

describe('whatever the room and the wish', () => {
  const size = (least: number, most: number) => fc.integer({ min: least, max: most }).map(inch);
  const rooms = fc.record({
    width: size(40, 150),
    height: size(40, 120),
    start: fc.tuple(size(0, 12), size(0, 12)),
    shift: fc.constantFrom(0, 4),
    door: fc.constantFrom(0, 1, 2, 3),
    paceM2PerHour: fc.double({ min: 0.1, max: 2, noNaN: true }),
    count: fc.integer({ min: 1, max: 5 }),
    wish: fc.constantFrom('auto' as const, 'count' as const, 'splits' as const),
  });

  test('every piece belongs to one zone, first and last are its own, and areas add up', () => {
    fc.assert(
      fc.property(rooms, ({ width, height, start, shift, door, paceM2PerHour, count, wish }) => {
        const floor: Floor = {
          ...hall,
          outline: rectangle(width, height),
          origin: start,
          shift: inch(shift),
          doors: { [door]: 'hall' },
        };
        const wishes = {
          auto: { kind: 'auto' },
          count: { kind: 'count', count },
          splits: { kind: 'splits', from: 'hall', at: [inch(14), inch(31)] },
        } as const;
        const { zones, layout } = zonesOf(floor, wishes[wish], pace(paceM2PerHour));
        expect(zones.flatMap(({ pieces }) => pieces).sort()).toEqual(
          layout.pieces.map(({ id }) => id).sort(),
        );
        expect(zones.map(({ number }) => number)).toEqual(zones.map((_, i) => i + 1));
        for (const zone of zones)
          expect(zone.pieces).toEqual(expect.arrayContaining([zone.first, zone.last]));
        if (wish === 'count') expect(zones.length).toBeLessThanOrEqual(count);
        expect(zones.slice(0, -1).every(({ seam }) => seam !== undefined)).toBe(true);
      }),
      { seed: 20270315, numRuns: process.env.LONG === '1' ? 2000 : 30 },
    );
  });
});
