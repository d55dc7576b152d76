import { describe, expect, test } from 'vitest';
import { baseChecks } from '../../src/materials/baseChecks.ts';
import { toMeasure } from '../../src/materials/toMeasure.ts';
import { JOB } from './plainJob.ts';

const of = (base: Partial<typeof JOB.base>) =>
  baseChecks({ ...JOB.base, ...base }).map(({ state, code }) => `${state} ${code.replace('base.', '')}`);

describe('film and moisture of the base (common practice, no source)', () => {
  test.each([
    [undefined, 'open film.test'],
    [{ kind: 'none' }, 'open film.test'],
    [{ kind: 'curing' }, 'open film.curing'],
    [{ kind: 'curing', drop: 'stays' }, 'fail film.stays'],
    [{ kind: 'curing', drop: 'soaks in' }, 'pass film.soaks'],
    [{ kind: 'paint', drop: 'soaks in' }, 'fail film.paint'],
  ] as const)('%o: %s', (film, told) => {
    expect(of(film ? { film } : {})[0]).toBe(told);
  });

  test.each([
    [3, 3, 'pass moisture.dry'],
    [3.1, 3, 'fail moisture.wet'],
    [3, undefined, 'open moisture.noLimit'],
  ])('%d lb against %d: %s', (reads, limit, told) => {
    const lb = (value: number) => ({ value, unit: 'lb' as const });
    const moisture = { reads: lb(reads), ...(limit === undefined ? {} : { limit: lb(limit) }) };
    expect(of({ moisture })[1]).toBe(told);
  });

  test('what passes on a floor that comes up stays open, what fails there still fails', () => {
    const removed = [{ name: 'vinyl', thickness: 640 }];
    const moisture = (value: number) => ({
      reads: { value, unit: 'lb' as const },
      limit: { value: 3, unit: 'lb' as const },
    });
    const film = { kind: 'curing', drop: 'soaks in' } as const;
    expect(of({ removed, film, moisture: moisture(2) })).toEqual(['open film.again', 'open moisture.again']);
    expect(of({ removed, moisture: moisture(4) })[1]).toBe('fail moisture.wet');
    expect(of({ removed, readOn: 'boards', film, moisture: moisture(2) })).toEqual([
      'pass film.soaks',
      'pass moisture.dry',
    ]);
  });

  test('nothing read: the sheet asks for it', () => {
    expect(of({})[1]).toBe('open moisture.test');
  });
});

test('an appliance that comes out without a height is to be measured, one with a height is not', () => {
  const comesOut = [{ what: 'dishwasher' }, { what: 'range' }, { what: 'base' }];
  const heights = [{ name: 'dishwasher', kind: 'appliance' as const, height: 1, above: 'boards' }];
  const base = { ...JOB.base, comesOut, heights };
  expect(toMeasure({ ...JOB, base })).toEqual([{ name: 'range', code: 'height.measure.appliance' }]);
});
