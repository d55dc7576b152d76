import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { CalendarEntry } from '../../src/calendar/CalendarEntry.ts';
import { toIso, toMinutes, weekday } from '../../src/calendar/localTime.ts';
import { makeCalendar } from '../../src/calendar/makeCalendar.ts';
import type { Job } from '../../src/job/Job.ts';
import { FLOOR, JOB } from '../materials/plainJob.ts';

/** Set on Monday 2026-11-30, grouted by Wednesday 2 December 11:00. */
const MONDAY = [{ number: 1, hours: 7 }];
const FLANGE = { meets: 'flange' } as Job['surfaces'][number]['obstacles'][number];
const PRODUCT = ['sealAfterHours', 'sealToHours'];

const grouted = (change: Partial<Job['products']['grout']>, work: Partial<Job['work']> = {}): Job => ({
  ...JOB,
  work: { ...JOB.work, ...work },
  products: { ...JOB.products, grout: { ...JOB.products.grout, ...change } },
});
const entryOf = (entries: readonly CalendarEntry[], code: string) => entries.find((one) => one.code === code);
const entry = (job: Job, code: string) => entryOf(makeCalendar(job, MONDAY), code);

describe('the window for sealing has both its ends', () => {
  test('a window of our own that no working hour falls into keeps them, and sealing says that it comes after', () => {
    // From Friday 4 December 23:00 to Sunday 00:00.
    const job = grouted({ sealAfterHours: [60, 85], stated: ['sealAfterHours'] });
    expect(entry(job, 'sealFrom')?.from).toBe('2026-12-05T07:00');
    expect(entry(job, 'sealTo')?.from).toBe('2026-12-05T21:00');
    expect(entry(job, 'seal')).toMatchObject({
      from: '2026-12-07T08:00',
      moved: 'missed',
      latest: '2026-12-05T21:00',
    });
  });

  test('a window that lies at night is told as it is', () => {
    // From Friday 4 December 23:00 to Saturday 05:00.
    const job = grouted({ sealAfterHours: [60, 66], stated: PRODUCT });
    expect(entry(job, 'sealFrom')?.from).toBe('2026-12-04T23:00');
    expect(entry(job, 'sealTo')?.from).toBe('2026-12-05T05:00');
  });

  test('of one moment it has one', () => {
    const job = grouted({ sealAfterHours: [96, 96], stated: PRODUCT });
    expect(entry(job, 'sealTo')).toBeUndefined();
    expect(entry(job, 'seal')?.moved).not.toBe('missed');
  });
});

describe('sealing is booked in its window wherever working hours lie in it', () => {
  test('the same day where the next working morning is too late', () => {
    // From Friday 4 December 11:00 to Sunday 11:00, Monday to Friday.
    const job = grouted({ sealAfterHours: [48, 96], stated: PRODUCT });
    expect(entry(job, 'seal')).toMatchObject({ from: '2026-12-04T11:00', to: '2026-12-04T14:00' });
    expect(entry(job, 'seal')?.moved).toBeUndefined();
  });

  test('on a Saturday or a day off of the crew where the owner seals, and on a working day where another does', () => {
    // From Friday 4 December 17:00 to Sunday 17:00, Monday to Friday.
    const job = grouted({ sealAfterHours: [54, 102], stated: PRODUCT }, { daysOff: ['2026-12-05'] });
    const by = (who: string) => {
      const sealer = { ...job.products.sealer, by: who };
      return entry({ ...job, products: { ...job.products, sealer } }, 'seal');
    };
    for (const owner of ['owner', 'the owner']) {
      expect(by(owner)).toMatchObject({ from: '2026-12-05T08:00', to: '2026-12-05T11:00' });
      expect(by(owner)?.moved).not.toBe('missed');
    }
    expect(by('setter')).toMatchObject({ from: '2026-12-07T08:00', moved: 'missed' });
  });

  test('not before the soft joints are done: ANSI A108.01 §3.7.4', () => {
    const job = grouted({ sealAfterHours: [12, 60], walkHours: 48, stated: [...PRODUCT, 'walkHours'] });
    const calendar = makeCalendar(job, MONDAY);
    const [soft, seal] = ['softJoints', 'seal'].map((code) => entryOf(calendar, code)!.from);
    expect(seal! >= soft!).toBe(true);
  });
});

/** Whether a stretch of work, begun on a quarter of an hour, lies in the window and in the hours of one working day. */
function fits(job: Job, from: number, to: number, minutes: number): boolean {
  const { days, startMinute, endMinute } = job.work;
  for (let start = Math.ceil(from / 15) * 15; start + minutes <= to; start += 15) {
    const day = start - (start % 1440);
    const open = days.includes(weekday(day)) && start - day >= startMinute;
    if (open && start - day + minutes <= endMinute) return true;
  }
  return false;
}

const jobs = fc
  .record({
    days: fc.subarray([1, 2, 3, 4, 5, 6, 7], { minLength: 1 }),
    first: fc.integer({ min: 0, max: 27 }),
    start: fc.integer({ min: 24, max: 40 }),
    long: fc.integer({ min: 16, max: 40 }),
    walk: fc.integer({ min: 6, max: 72 }),
    heavy: fc.integer({ min: 6, max: 240 }),
    water: fc.integer({ min: 6, max: 240 }),
    seal: fc.tuple(fc.integer({ min: 6, max: 200 }), fc.integer({ min: 0, max: 72 })),
    stated: fc.subarray(['walkHours', 'heavyHours', 'waterHours', 'sealAfterHours', 'sealToHours']),
    tempC: fc.integer({ min: 12, max: 24 }),
    toilet: fc.boolean(),
  })
  .map(({ days, first, start, long, walk, heavy, water, seal, stated, tempC, toilet }) => {
    const job = grouted(
      {
        walkHours: walk,
        heavyHours: heavy,
        waterHours: water,
        sealAfterHours: [seal[0], seal[0] + seal[1]],
        stated,
      },
      {
        days,
        from: toIso(toMinutes('2026-11-30') + first * 1440).slice(0, 10),
        startMinute: start * 15,
        endMinute: (start + long) * 15,
        tempC,
      },
    );
    return toilet ? { ...job, surfaces: [{ ...FLOOR, obstacles: [FLANGE] }] } : job;
  });

const property = (holds: (job: Job, calendar: readonly CalendarEntry[]) => void) =>
  fc.assert(
    fc.property(jobs, (job) => holds(job, makeCalendar(job, MONDAY))),
    { seed: 20270702, numRuns: 500 },
  );

describe('whatever the window and the working hours', () => {
  test('it is told by both ends in their order, or by one where it is one moment', () => {
    property((job, calendar) => {
      const [from, to] = [entryOf(calendar, 'sealFrom')!, entryOf(calendar, 'sealTo')];
      if (to) expect(to.from > from.from).toBe(true);
      else expect(job.products.grout.sealAfterHours[1]).toBe(job.products.grout.sealAfterHours[0]);
    });
  });

  test('sealing lies in it, or says that it does not; and it says so only where no working hours of one day are long enough', () => {
    property((job, calendar) => {
      const [from, to, seal, soft] = ['sealFrom', 'sealTo', 'seal', 'softJoints'].map(
        (code) => entryOf(calendar, code)!,
      );
      const begins = Math.max(toMinutes(from!.due ?? from!.from), toMinutes(soft!.from));
      expect(toMinutes(seal!.from)).toBeGreaterThanOrEqual(begins);
      if (!to) return;
      const latest = toMinutes(to.due ?? to.from);
      const late = toMinutes(seal!.to!) > latest;
      expect(seal!.moved === 'missed').toBe(late);
      expect(seal!.latest).toBe(late ? to.from : undefined);
      if (late) expect(fits(job, begins, latest, job.products.grout.groutingHours * 60)).toBe(false);
    });
  });

  test('nothing is allowed on the day on which the room is closed again, before it is dry', () => {
    property((_, calendar) => {
      const closed = entryOf(calendar, 'sealerCures')!;
      for (const code of ['walk', 'heavy', 'furniture', 'water']) {
        const one = entryOf(calendar, code);
        if (!one || one.from >= closed.to!) continue;
        expect([code, one.from.slice(0, 10) < closed.from.slice(0, 10)]).toEqual([code, true]);
      }
    });
  });

  test('a toilet goes back in working hours of a day before that day, or when the sealer is dry', () => {
    property((job, calendar) => {
      const closed = entryOf(calendar, 'sealerCures')!;
      const back = calendar.find(({ concerns }) => concerns === 'toilet');
      expect(back !== undefined).toBe(job.surfaces[0]!.obstacles.length > 0);
      if (!back || back.from >= closed.to!) return;
      const day = toMinutes(closed.from.slice(0, 10));
      expect(fits(job, toMinutes(back.from), day, 15)).toBe(true);
    });
  });
});
