import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { HeightSpec, Job, SurfaceSpec } from '../../src/job/Job.ts';
import { makeHeights } from '../../src/materials/makeHeights.ts';
import { printLength, type System, TICKS_PER_INCH, TICKS_PER_MM } from '../../src/measure/index.ts';
import { inches } from '../../src/trade/index.ts';
import { JOB } from './plainJob.ts';

/** New layers of 27/32 in on an old floor of vinyl that stays: common practice, no source. */
const FRESH = [1 / 4, 1 / 8, 3 / 8, 3 / 32].map((thickness, at) => ({
  name: `layer ${at}`,
  thickness: inches(thickness),
}));
const VINYL = { name: 'sheet vinyl', thickness: inches(1 / 8) };

function resultOf(height: HeightSpec, base: Partial<Job['base']> = {}) {
  return makeHeights({
    ...JOB,
    base: { ...JOB.base, kept: [VINYL], fresh: FRESH, heights: [height], ...base },
  }).results[0]!;
}

const above = (kind: HeightSpec['kind'], height: number, wanted?: number): HeightSpec => ({
  name: kind,
  kind,
  height: inches(height),
  above: 'vinyl',
  ...(wanted === undefined ? {} : { wanted: inches(wanted) }),
});

describe('heights over the finished tile (cases: common practice, no source)', () => {
  test('a flange 1/4 in over the old floor ends 19/32 below; rings of 1/2 and 1/4 raise it to 5/32 above', () => {
    const result = resultOf(above('flange', 1 / 4));
    expect(result).toMatchObject({ after: -inches(19 / 32), pass: true, code: 'height.flange.spacers' });
    expect(result.figures).toMatchObject({
      thick: inches(1 / 2),
      thin: inches(1 / 4),
      raised: inches(5 / 32),
    });
  });

  test('a flange that stands too high is left to the plumber', () => {
    expect(resultOf(above('flange', 2))).toMatchObject({ pass: false, code: 'height.flange.tooHigh' });
  });

  test('where the floor falls to a drain a flange is measured from tile laid dry on the slope', () => {
    const flange = { meets: 'flange' } as SurfaceSpec['obstacles'][number];
    const floor = { ...JOB.surfaces[0]!, obstacles: [flange] };
    const codeOn = (surface: SurfaceSpec) =>
      makeHeights({
        ...JOB,
        surfaces: [surface],
        base: { ...JOB.base, kept: [VINYL], fresh: FRESH, heights: [above('flange', 1)] },
      }).results[0]!;
    const falls = { to: 'drain', from: ['A-B'], folds: 'drawn', joint: inches(1 / 8) } as const;
    expect(codeOn(floor).code).toBe('height.flange.fits');
    expect(codeOn({ ...floor, falls })).toMatchObject({ pass: false, code: 'height.flange.onFall' });
  });

  test('an opening of 34 1/2 in with a machine of 33 7/8: will not go back in, new layers at most 5/8', () => {
    const result = resultOf(above('appliance', 34.5, 33.875));
    expect(result).toMatchObject({
      after: inches(33 + 21 / 32),
      pass: false,
      code: 'height.appliance.tooHigh',
    });
    expect(result.figures).toMatchObject({ short: inches(7 / 32), freshMost: inches(5 / 8) });
  });

  // 34 1/2 in less layers of 27/32 leave 33 21/32.
  test.each([
    [33 + 17 / 32, 'fits'],
    [33 + 37 / 64, 'tight'],
    [33 + 21 / 32, 'tight'],
  ])('a machine of %f in in that opening: under 1/8 in to spare is tight', (wanted, how) => {
    const { pass, code } = resultOf(above('appliance', 34.5, wanted));
    expect({ pass, code }).toEqual({ pass: true, code: `height.appliance.${how}` });
  });

  test('a door with 1/2 in now and 3/8 wanted: trim 23/32', () => {
    const result = resultOf(above('door', 1 / 2, 3 / 8));
    expect(result).toMatchObject({
      pass: false,
      code: 'height.door.trim',
      figures: { trim: inches(23 / 32) },
    });
  });

  test('3/8 tile, 1/8 mortar and 1/4 board meet 3/4 wood flush', () => {
    const fresh = [3 / 8, 1 / 8, 1 / 4].map((thickness) => ({ name: 'new', thickness: inches(thickness) }));
    const wood = { ...above('floor', 3 / 4), above: 'boards' };
    expect(resultOf(wood, { kept: [], fresh })).toMatchObject({
      after: 0,
      pass: true,
      code: 'height.floor.flush',
    });
  });

  test('a floor 3/8 in lower is bevelled 1/8 over 1/4: ADA Standards §303', () => {
    const wood = { ...above('floor', 27 / 32 - 3 / 8), above: 'boards' };
    const result = resultOf(wood, { kept: [] });
    expect(result).toMatchObject({
      code: 'height.floor.bevel.lower',
      figures: { rise: inches(1 / 8), run: inches(1 / 4) },
    });
  });

  test('a removed floor no longer lifts anything, but a height taken on it still counts it', () => {
    const result = resultOf(above('flange', 1 / 4), { kept: [], removed: [VINYL] });
    expect(result.after).toBe(inches(1 / 4 + 1 / 8 - 27 / 32));
  });

  test('undercut: 1/2 + 1/8 + 3/8 + 1/8 and 1/16 over', () => {
    const fresh = [1 / 2, 1 / 8, 3 / 8, 1 / 8].map((thickness) => ({
      name: 'new',
      thickness: inches(thickness),
    }));
    expect(makeHeights({ ...JOB, base: { ...JOB.base, fresh } }).undercut).toBe(inches(1 + 3 / 16));
  });
});

/** What a reader takes from the sheet, in tenths of a millimetre or 64ths of an inch. */
function readBack(ticks: number, system: System): number {
  const text = printLength(ticks, system).replace('−', '-');
  if (system === 'mm') return Math.round(Number.parseFloat(text) * 10);
  const [, sign, whole = '0', over = '0', under = '1'] = /^(-?)(?:(\d+)(?= |$))? ?(?:(\d+)\/(\d+))? in$/.exec(
    text,
  )!;
  return (sign ? -1 : 1) * (Number(whole) * 64 + (Number(over) * 64) / Number(under));
}

describe('figures of a sheet add up as they are printed, whatever the job is printed in', () => {
  const thickness = fc.oneof(
    fc.integer({ min: 2, max: 40 }).map((n) => (n * TICKS_PER_INCH) / 32),
    fc.integer({ min: 2, max: 60 }).map((n) => (n * TICKS_PER_MM) / 2),
  );
  const layers = fc.array(thickness, { minLength: 1, maxLength: 5 });
  const heightsOf = (fresh: readonly number[], kept: readonly number[], height: number, system: System) => {
    const named = (all: readonly number[]) => all.map((one, i) => ({ name: `layer ${i}`, thickness: one }));
    const spec = (kind: HeightSpec['kind'], wanted?: number): HeightSpec => ({
      name: kind,
      kind,
      height,
      above: 'boards',
      ...(wanted === undefined ? {} : { wanted }),
    });
    const heights = [spec('flange'), spec('door'), spec('appliance', 10 * TICKS_PER_INCH)];
    const base = { ...JOB.base, kept: named(kept), fresh: named(fresh), heights };
    return makeHeights({ ...JOB, print: { ...JOB.print, system }, base });
  };

  test.each(['inches', 'mm'] as const)('layers, rings, trims and openings in %s', (system) => {
    const read = (ticks: number | string | undefined) => readBack(Number(ticks), system);
    fc.assert(
      fc.property(layers, layers, thickness, (fresh, kept, height) => {
        const { stack, results } = heightsOf(fresh, kept, height, system);
        const sum = [...kept, ...fresh].reduce((total, one) => total + read(one), 0);
        expect(read(stack)).toBe(sum);
        for (const { after } of results) expect(read(after)).toBe(read(height) - sum);
        const [flange, door, opening] = results;
        if (flange!.code === 'height.flange.spacers') {
          const { below, spacers, raised, thick, thin, thickCount, thinCount } = flange!.figures;
          const rings = Number(thickCount) * read(thick) + Number(thinCount) * read(thin);
          expect(rings).toBe(read(spacers));
          expect(read(spacers) - read(below)).toBe(read(raised));
        }
        if (door!.code === 'height.door.trim')
          expect(read(door!.after) + read(door!.figures.trim)).toBe(read(door!.figures.wanted));
        if (opening!.code === 'height.appliance.tooHigh')
          expect(read(opening!.figures.height) + read(opening!.figures.short)).toBe(
            read(opening!.figures.wanted),
          );
      }),
      { seed: 7, numRuns: 500 },
    );
  });
});
