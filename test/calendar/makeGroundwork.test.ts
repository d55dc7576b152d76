import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { CalendarEntry } from '../../src/calendar/CalendarEntry.ts';
import { makeCalendar } from '../../src/calendar/makeCalendar.ts';
import type { Job } from '../../src/job/Job.ts';
import { inches } from '../../src/trade/index.ts';
import { JOB } from '../materials/plainJob.ts';

const GROUND = ['comesOut', 'lift', 'fill', 'layer', 'set'];
const CURES = ['fillCures', 'layerCures'];
const QUARTER = 15 * 60_000;
const at = (iso: string) => Date.parse(`${iso}:00Z`);

/** Quarters of an hour between two moments that lie in working hours, looked at one by one. */
function workedQuarters({ work }: Job, from: string, to: string): number {
  let count = 0;
  for (let time = at(from); time < at(to); time += QUARTER) {
    const clock = new Date(time);
    const minute = clock.getUTCHours() * 60 + clock.getUTCMinutes();
    const open = minute >= work.startMinute && minute < work.endMinute;
    if (open && work.days.includes(clock.getUTCDay() || 7)) count += 1;
  }
  return count;
}

const layer = fc.record({
  name: fc.constantFrom('membrane', 'board', 'mortar', 'leveler'),
  thickness: fc.constant(inches(1 / 8)),
  waitHours: fc.option(fc.integer({ min: 0, max: 72 }), { nil: undefined }),
});
const jobs = fc
  .record({
    from: fc.integer({ min: 1, max: 28 }),
    issued: fc.integer({ min: 1, max: 28 }),
    days: fc.subarray([1, 2, 3, 4, 5, 6, 7], { minLength: 1 }),
    tempC: fc.integer({ min: 11, max: 25 }),
    removed: fc.subarray(['sheet vinyl', 'carpet']),
    laid: fc.array(layer, { maxLength: 3 }),
    out: fc.subarray(['toilet', 'base']),
    fillWait: fc.option(fc.integer({ min: 0, max: 48 }), { nil: undefined }),
    laboratory: fc.option(fc.integer({ min: 1, max: 300 }), { nil: undefined }),
    nails: fc.boolean(),
  })
  .map((given): Job => {
    const day = (n: number) => `2026-12-${String(n).padStart(2, '0')}`;
    const thin = inches(1 / 8);
    const { houseYear: _, ...undated } = JOB;
    return {
      ...undated,
      revision: { letter: 'A', date: day(given.issued) },
      work: { ...JOB.work, from: day(given.from), days: given.days, tempC: given.tempC },
      base: {
        ...JOB.base,
        removed: given.removed.map((name) => ({ name, thickness: thin })),
        fresh: [
          ...given.laid.map(({ waitHours, ...one }) =>
            waitHours === undefined ? one : { ...one, waitHours },
          ),
          { name: 'mortar under tile', thickness: thin },
          { name: 'tile', thickness: thin },
        ],
        comesOut: given.out.map((what) => ({ what })),
        ...(given.nails ? { nailHoles: 'along A-B' } : {}),
        ...(given.fillWait === undefined ? {} : { fillWaitHours: given.fillWait }),
        ...(given.laboratory === undefined ? {} : { laboratoryHours: given.laboratory }),
      },
    };
  });

const zones = [
  { number: 1, hours: 3, areaM2: 3 },
  { number: 2, hours: 2.6, areaM2: 2.6 },
];
const holds = (check: (job: Job, entries: readonly CalendarEntry[]) => void) =>
  fc.assert(
    fc.property(jobs, (job) => check(job, makeCalendar(job, zones))),
    { seed: 61, numRuns: 200 },
  );

describe('what comes before the first tile, in 200 jobs looked at by a clock of quarter hours', () => {
  test('follows one another: nothing begins before the step before it is done and has been left alone', () => {
    holds((_, entries) => {
      const steps = entries.filter(({ code }) => [...GROUND, ...CURES].includes(code));
      for (const [i, step] of steps.entries()) {
        const before = steps[i - 1];
        if (!before) continue;
        const done = CURES.includes(before.code)
          ? at(before.from) + before.hours! * 3_600_000
          : at(before.to!);
        expect(at(step.from)).toBeGreaterThanOrEqual(done);
      }
    });
  });

  test('takes as many working quarters of an hour as its hours, rounded up, and begins in one', () => {
    holds((job, entries) => {
      for (const { code, from, to, hours } of entries)
        if (GROUND.includes(code)) {
          expect(workedQuarters(job, from, to!)).toBe(Math.ceil(hours! * 4 - 1e-3));
          expect(workedQuarters(job, from, new Date(at(from) + QUARTER).toISOString().slice(0, 16))).toBe(1);
        }
    });
  });

  test('waits for the laboratory where it must, whose sample is not older than the sheets', () => {
    holds((job, entries) => {
      const suspect = [
        ...job.base.removed.map(({ name }) => name).filter((name) => name === 'sheet vinyl'),
        ...(job.base.comesOut.some(({ what }) => what === 'base') ? ['paint'] : []),
      ];
      const sample = entries.find(({ code }) => code === 'laboratory');
      expect(sample?.things ?? []).toEqual(suspect);
      if (!sample) return;
      const first = entries.find(({ code }) => GROUND.includes(code))!;
      const hours = job.base.laboratoryHours ?? 7 * 24;
      expect(at(sample.to!) - at(sample.from)).toBe(hours * 3_600_000);
      expect(at(first.from)).toBeGreaterThanOrEqual(at(sample.to!));
      expect(sample.from.slice(0, 10) >= job.revision.date).toBe(true);
      expect(
        workedQuarters(job, sample.from, new Date(at(sample.from) + QUARTER).toISOString().slice(0, 16)),
      ).toBe(1);
    });
  });

  test('has a step for each thing that the job names, and none that it does not', () => {
    holds(({ base }, entries) => {
      const things = (code: string) =>
        entries.filter((one) => one.code === code).flatMap((one) => one.things ?? []);
      const codes = new Set(entries.map(({ code }) => code));
      expect(things('comesOut')).toEqual(base.comesOut.map(({ what }) => what));
      expect(things('lift')).toEqual(base.removed.map(({ name }) => name));
      expect(codes.has('fill')).toBe(base.removed.length > 0 || base.nailHoles !== undefined);
      const under = base.fresh.slice(0, -2).map(({ name }) => name);
      const pieces = under.filter((name) => name !== 'mortar');
      expect(things('layer')).toEqual(pieces.length > 0 ? pieces : under);
    });
  });
});

test('a bed that is floated has a day of its own and cures before the membrane, whatever it is called', () => {
  const thin = inches(1 / 8);
  const laid = (name: string) =>
    makeCalendar(
      {
        ...JOB,
        base: {
          ...JOB.base,
          fresh: [
            { name, thickness: inches(5 / 4), waitHours: 72 },
            { name: 'mortar', thickness: thin },
            { name: 'membrane', thickness: thin },
            { name: 'mortar under tile', thickness: thin },
            { name: 'tile', thickness: thin },
          ],
        },
      },
      zones,
    ).filter(({ code }) => code === 'layer' || code === 'layerCures');
  for (const name of ['sloped mortar', 'mud bed', 'mortar', 'recrecido de mortero', 'argamassa de caimento'])
    expect(laid(name)).toMatchObject([
      { code: 'layer', things: [name] },
      { code: 'layerCures', things: [name], hours: 72, source: 'job' },
      { code: 'layer', things: ['membrane'] },
      { code: 'layerCures', things: ['membrane'] },
    ]);
});

test('the floor is cold a day before anything wet touches it: common practice, no source', () => {
  const job: Job = { ...JOB, base: { ...JOB.base, heated: true, nailHoles: 'along A-B' } };
  expect(makeCalendar(job, zones).slice(0, 2)).toMatchObject([
    { code: 'heatOff', from: '2026-11-29T08:00' },
    { code: 'fill', from: '2026-11-30T08:00' },
  ]);
});

test('heating that the job lays itself is not to be switched off before', () => {
  const offOf = (name: string) => {
    const fresh = [{ name, thickness: 1016 }, ...JOB.base.fresh];
    return makeCalendar({ ...JOB, base: { ...JOB.base, heated: true, fresh } }, zones)
      .filter(({ code }) => code.startsWith('heat'))
      .map(({ code }) => code);
  };
  expect(offOf('board')).toEqual(['heatOff', 'heat']);
  for (const name of ['heat mat', 'heating cable', 'malla calefactora', 'manta de aquecimento'])
    expect(offOf(name)).toEqual(['heat']);
});
