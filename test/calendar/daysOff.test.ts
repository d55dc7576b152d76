import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { makeCalendar } from '../../src/calendar/makeCalendar.ts';
import type { Job } from '../../src/job/Job.ts';
import { readJob } from '../../src/job/readJob.ts';
import { JOB } from '../materials/plainJob.ts';

/** Seven hours of setting from Monday 30 November 2026, 08:00 to 16:00, Monday to Friday. */
const ZONES = [{ number: 1, hours: 7 }];

const without = (...daysOff: readonly string[]): Job => ({ ...JOB, work: { ...JOB.work, daysOff } });
const from = (job: Job, code: string) => makeCalendar(job, ZONES).find((one) => one.code === code)?.from;

describe('on a day off', () => {
  test('nobody begins', () => {
    expect(from(without(), 'set')).toBe('2026-11-30T08:00');
    expect(from(without('2026-11-30'), 'set')).toBe('2026-12-01T08:00');
  });

  test('nobody goes on: grout waits for the next working day', () => {
    expect(from(without(), 'grout')).toBe('2026-12-02T08:00');
    expect(from(without('2026-12-02'), 'grout')).toBe('2026-12-03T08:00');
    expect(from(without('2026-12-02', '2026-12-03', '2026-12-04'), 'grout')).toBe('2026-12-07T08:00');
  });

  test('mortar and grout cure all the same', () => {
    expect(from(without('2026-12-01'), 'grout')).toBe(from(without(), 'grout'));
  });

  test('no work is booked, whichever days are off', () => {
    const day = fc
      .integer({ min: 0, max: 24 })
      .map((n) => new Date(Date.UTC(2026, 10, 28 + n)).toISOString().slice(0, 10));
    fc.assert(
      fc.property(fc.uniqueArray(day, { maxLength: 12 }), (off) => {
        const worked = makeCalendar(without(...off), ZONES).filter(({ code }) =>
          ['lift', 'fill', 'set', 'grout', 'softJoints', 'seal'].includes(code),
        );
        expect(worked.length).toBeGreaterThan(2);
        for (const { from, to = from } of worked) {
          expect(off).not.toContain(from.slice(0, 10));
          expect(off).not.toContain(to.slice(0, 10));
        }
      }),
    );
  });
});

describe('days off in a job file', () => {
  const read = (line: string) =>
    readJob(`title: x\nrevision: {letter: A, date: 2027-03-01}\nwork: {${line}}\n`, 'jobs/x/job.yaml');

  test('are dates, each told where it is none', () => {
    const { problems } = read('days off: [2027-05-31, 2027-02-30, Christmas]');
    expect(problems.filter(({ code }) => code === 'notADayOff')).toHaveLength(2);
  });

  test('are none unless told, and that is printed with what nobody said', () => {
    const text = `title: x\nrevision: {letter: A, date: 2027-03-01}\ntile: {field: {read: 12 in x 12 in}}\njoint: 1/8 in\nfloor: {walls: {A-B: 10 ft, B-C: 8 ft, C-D: 10 ft, D-A: 8 ft}}\n`;
    const { job } = readJob(text, 'jobs/x/job.yaml');
    expect(job?.work.daysOff).toEqual([]);
    expect(job?.defaults).toContainEqual(expect.objectContaining({ path: 'work.days off' }));
  });
});
