import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { makeCalendar } from '../../src/calendar/makeCalendar.ts';
import type { BaseSpec, Job } from '../../src/job/Job.ts';
import type { Layout } from '../../src/layout/Layout.ts';
import { makeMaterials } from '../../src/materials/makeMaterials.ts';
import { feet, inches, millimetres } from '../../src/trade/index.ts';
import { JOB, squareFeet } from './plainJob.ts';

const vinyl = { name: 'sheet vinyl', thickness: inches(1 / 8) };
const withBase = (base: Partial<BaseSpec>): Job => ({ ...JOB, base: { ...JOB.base, ...base } });
const laid = (area: number) => ({ ...squareFeet(area), pieces: [{ tile: 'field' }] }) as unknown as Layout;
const fillOf = (base: Partial<BaseSpec>, area = 100) =>
  makeMaterials(withBase(base), [laid(area)], {}).find(({ what }) => what === 'fill');
const grid = (low: number) => {
  const flat = [0, 0, 0, 0, 0, 0];
  const heights = [flat, flat, [0, 0, low, low, 0, 0], flat, flat, flat];
  return { surface: 'floor', from: [], every: feet(2), heights } as unknown as NonNullable<BaseSpec['grid']>;
};

const optional = <T>(value: T) => fc.constantFrom(undefined, value);
const bases = fc
  .record({
    removed: fc.subarray([vinyl]),
    flatness: fc.subarray([
      { gap: inches(1 / 2), under: feet(10) },
      { gap: inches(1 / 16), under: feet(10) },
    ]),
    hollow: optional([{ where: 'by the door' }]),
    nailHoles: optional('along A-B'),
    fillBagLitres: optional(10),
    grid: fc.constantFrom(undefined, grid(0), grid(-2540)),
  })
  .map((given) => Object.fromEntries(Object.entries(given).filter(([, value]) => value !== undefined)));

describe('a floor is filled in the calendar and in the tally, or in neither', () => {
  test('in 300 jobs, whatever was found on the base', () => {
    const zones = [{ number: 1, hours: 3, areaM2: 3 }];
    const seen = new Set<boolean>();
    fc.assert(
      fc.property(bases, (base) => {
        const inCalendar = makeCalendar(withBase(base), zones).some(({ code }) => code === 'fill');
        seen.add(inCalendar);
        expect(fillOf(base) !== undefined).toBe(inCalendar);
      }),
      { seed: 7, numRuns: 300 },
    );
    expect(seen.size).toBe(2);
  });
});

describe('how much patch a floor takes that was not read on a grid', () => {
  test('2 mm under 2 m: half of it over a circle of 2 m is π litres (geometry)', () => {
    const line = fillOf({ removed: [vinyl], flatness: [{ gap: millimetres(2), under: millimetres(2000) }] });
    expect(line).toMatchObject({ mark: 'G', buyUnit: 'litre' });
    expect(line!.amount).toBeCloseTo(Math.PI, 9);
    expect(line!.sum.map(({ code }) => code)).toContain('material.fill.sum.again');
  });

  test('hollows take no more than the floor, the deepest first: 1/4 in over 50 sq ft is half of that (geometry)', () => {
    const flatness = [1 / 8, 1 / 4].map((gap) => ({ gap: inches(gap), under: feet(10) }));
    const cubicInches = 50 * 144 * (1 / 8);
    expect(fillOf({ removed: [vinyl], flatness }, 50)!.amount).toBeCloseTo(cubicInches * 0.016387064, 6);
  });

  test('on a bare base only what is over the limit is a hollow: 1/8 in in 10 ft under a long tile (ANSI A108.01)', () => {
    const read = (gap: number) => fillOf({ flatness: [{ gap: inches(gap), under: feet(10) }] });
    expect(read(1 / 16)).toBeUndefined();
    expect(read(1 / 2)!.amount).toBeGreaterThan(0);
  });

  test('a bare base that was read after the old floor came up is not reckoned again', () => {
    const flatness = [{ gap: inches(1 / 2), under: feet(10) }];
    const codes = (readOn: string) =>
      fillOf({ removed: [vinyl], readOn, flatness })!.sum.map(({ code }) => code);
    expect(codes('boards')).not.toContain('material.fill.sum.again');
    expect(codes('sheet vinyl')).toContain('material.fill.sum.again');
  });

  test('where nothing was read a skim, 1/32 in over 100 sq ft, in whole bags (common practice, no source)', () => {
    const litres = 100 * 144 * (1 / 32) * 0.016387064;
    expect(fillOf({ removed: [vinyl] })).toMatchObject({ mark: 'P', source: 'practice' });
    expect(fillOf({ removed: [vinyl] })!.amount).toBeCloseTo(litres, 6);
    expect(fillOf({ removed: [vinyl], fillBagLitres: 4 })).toMatchObject({ buy: 2, buyUnit: 'bag' });
  });
});
