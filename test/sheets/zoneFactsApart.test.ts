import { describe, expect, test } from 'vitest';
import { fortyJobs } from '../pages/support/fortyJobs.ts';
import { sheetsOf } from './demos.ts';

interface ZoneData {
  readonly apart: boolean;
  readonly factsApart: boolean;
  readonly found: readonly { readonly apart: boolean; readonly lines: readonly unknown[] }[];
}

/** The zones of a kitchen of 312 sq ft. One is low and long, so that its plan lies and leaves no room for its four rows. */
const zones = sheetsOf('job-37', fortyJobs()['job-37']!, ['zone'])
  .sheets.filter(({ template }) => template === 'zone')
  .map(({ data }) => data as ZoneData);
const few = zones.filter(({ apart, found }) => apart && found.flatMap(({ lines }) => lines).length < 8);

describe('found spaces that are too few for a page of their own', () => {
  test('have the facts of their zone with them there', () => {
    expect(few.length).toBeGreaterThan(0);
    for (const { factsApart, found } of few) {
      expect(factsApart).toBe(true);
      expect(found.map(({ apart }) => apart)).toEqual([false]);
    }
  });

  test('the facts of all other zones stay under their plan', () => {
    const others = zones.filter((zone) => !few.includes(zone));
    expect(others.length).toBeGreaterThan(0);
    expect(others.map(({ factsApart }) => factsApart)).toEqual(others.map(() => false));
  });
});
