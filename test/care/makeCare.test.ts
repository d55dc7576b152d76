import { describe, expect, test } from 'vitest';
import { makeCalendar } from '../../src/calendar/makeCalendar.ts';
import { makeCare } from '../../src/care/makeCare.ts';
import type { Job, TileSpec } from '../../src/job/Job.ts';
import { JOB, withFloor, withTile } from '../materials/plainJob.ts';

const care = (job: Job) => makeCare(job, makeCalendar(job, [{ number: 1, hours: 7 }]));
const codes = (lines: readonly { readonly code: string }[]) => lines.map(({ code }) => code);
const epoxy = (job: Job): Job => ({
  ...job,
  products: { ...job.products, grout: { ...job.products.grout, kind: 'epoxy' } },
});

describe('what needs a sealer (common practice, no source)', () => {
  const rows: readonly (readonly [string, Partial<TileSpec>, boolean, readonly string[], boolean])[] = [
    ['glazed tile, cement grout', { material: 'ceramic' }, false, ['grout'], false],
    ['glazed tile, epoxy grout', { material: 'ceramic' }, true, [], false],
    ['unglazed porous tile', { material: 'ceramic', glazed: false }, false, ['grout', 'tile'], true],
    ['stone with epoxy grout', { material: 'stone', glazed: false }, true, ['tile'], true],
  ];
  test.each(rows)('%s', (_what, tile, isEpoxy, what, beforeGrouting) => {
    const job = isEpoxy ? epoxy(withTile(tile)) : withTile(tile);
    expect(care(job).seal).toEqual({ needed: what.length > 0, what, beforeGrouting });
  });
});

describe('what the owner is told (common practice, no source)', () => {
  const jobs = [
    JOB,
    epoxy(JOB),
    withTile({ material: 'stone', glazed: false }),
    withFloor({ exposure: 'wet' }),
    { ...JOB, base: { ...JOB.base, heated: true } },
  ];

  test.each(jobs)('five to do, five not to do, acid always forbidden and never advised', (job) => {
    const { dos, donts } = care(job);
    expect([dos.length, donts.length]).toEqual([5, 5]);
    expect(donts[0]?.code).toMatch(/^care\.dont\.acid/);
    expect(codes(dos).join()).not.toMatch(/acid|vinegar/);
  });

  test('nothing is said of cement grout or its powder where the grout is epoxy, nor of furniture in a shower', () => {
    const stone = withTile({ material: 'stone', glazed: false });
    const told = [JOB, stone, epoxy(JOB), epoxy(stone)].map((job) => codes(care(job).donts));
    const cement = ['care.dont.acid', 'care.dont.acidStone', 'care.dont.oldGrout'];
    expect(told.map((all) => all.some((code) => cement.includes(code)))).toEqual([true, true, false, false]);
    const drain = { name: 'drain', meets: 'drain' } as Job['surfaces'][number]['obstacles'][number];
    const shower = epoxy(withFloor({ exposure: 'wet', obstacles: [drain] }));
    expect(codes(care(shower).donts)).not.toContain('care.dont.drag');
    expect(codes(care(epoxy(JOB)).donts)).toContain('care.dont.drag');
    expect(care(shower).donts).toHaveLength(5);
  });

  test('dates come from the calendar; the drop test is yearly in a shower', () => {
    expect(care(JOB).dates).toEqual({
      walk: '2026-12-03T11:00',
      heavy: '2026-12-05T11:00',
      wet: '2026-12-09T11:00',
      sealFrom: '2026-12-06T11:00',
      sealTo: '2026-12-08T11:00',
      closedFrom: '2026-12-07T08:00',
      closedTo: '2026-12-08T11:00',
      checkAgainMonths: 24,
    });
    expect(care(withFloor({ exposure: 'wet' })).dates.checkAgainMonths).toBe(12);
  });
});

describe('a floor that gets wet', () => {
  const wet = withFloor({ exposure: 'wet' });
  const [floor] = wet.surfaces;
  const wall = { ...floor!.walls[0]!, meets: 'tub' } as const;
  const showers: readonly (readonly [string, Job])[] = [
    ['beside a tub', withFloor({ exposure: 'wet', walls: [wall, ...floor!.walls.slice(1)] })],
    ['called one', withFloor({ exposure: 'wet', name: 'shower' })],
    [
      'whose door goes out',
      { ...wet, base: { ...wet.base, comesOut: [{ ...wet.base.comesOut[0]!, what: 'Shower door' }] } },
    ],
  ];
  const water = (job: Job) =>
    makeCalendar(job, [{ number: 1, hours: 7 }]).find(({ code }) => code === 'water');

  test('is told of standing water, not of a shower that the room has not', () => {
    expect(codes(care(wet).dos)).toContain('care.do.standing');
    expect(codes(care(wet).dos)).not.toContain('care.do.squeegee');
    expect(water(wet)!.concerns).toBeUndefined();
  });

  test.each(showers)('is told of a shower: %s', (_what, job) => {
    expect(codes(care(job).dos)).toContain('care.do.squeegee');
    expect(water(job)!.concerns).toBe('shower');
  });
});

describe('what is kept on record (common practice, no source)', () => {
  test('what is known is printed, what is not is a line to fill in', () => {
    const used = care(withTile({ box: { pieces: 11, lot: '0417' } })).used;
    expect(used).toContainEqual({ code: 'care.used.lot', figures: { value: '0417' } });
    expect(codes(used)).toEqual(
      expect.arrayContaining([
        'care.used.caliber.blank',
        'care.used.groutBatch.blank',
        'care.used.sealDate.blank',
      ]),
    );
  });

  test('spares are named, and old grout powder is no spare', () => {
    expect(codes(care(JOB).used)).toEqual(
      expect.arrayContaining(['care.used.spares', 'care.used.groutPowder']),
    );
  });
});

describe('cautions', () => {
  test('dust, power and cement on every job: 29 CFR 1926.1153, 29 CFR 1926.404(b)(1), OSHA', () => {
    expect(codes(care(JOB).cautions)).toEqual(
      expect.arrayContaining(['caution.silica', 'caution.power', 'caution.cement', 'caution.licensed']),
    );
  });

  test('asbestos and lead where the house asks for them: 29 CFR 1926.1101, from memory', () => {
    const base = { ...JOB.base, removed: [{ name: 'vinyl', thickness: 1 }], comesOut: [{ what: 'base' }] };
    expect(codes(care({ ...JOB, base, houseYear: 1957 }).cautions).slice(0, 2)).toEqual([
      'caution.asbestos',
      'caution.lead',
    ]);
    expect(codes(care(JOB).cautions)).not.toContain('caution.asbestos');
  });
});
