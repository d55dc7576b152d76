import { describe, expect, test } from 'vitest';
import { parse, stringify } from 'yaml';
import { readJob } from '../../src/job/readJob.ts';
import { usualNotch } from '../../src/job/sections/mortar.ts';
import { notch } from '../../src/job/values/notch.ts';
import { TICKS_PER_INCH } from '../../src/measure/index.ts';
import { trowelFor } from '../../src/trade/index.ts';

const SMALL = `title: Small
revision: {date: 2027-03-01}
tile: {field: {read: 12 in x 12 in}}
joint: 1/8 in
floor:
  walls: {A-B: 8 ft, B-C: 8 ft, C-D: 8 ft, D-A: 8 ft}
  doorways: {hall: {in: D-A, from D: 9 in, clear: 30 in}}
  obstacles: {post: {rectangle: 4 in x 4 in, from A-B: 3 ft, from B-C: 3 ft}}
  pattern: {running: 1/3}
`;

/** Defaults that stand for several keys, or are said in words rather than as a value of the file. */
const IN_WORDS = /^floor\.angles\.|door line$/;

type Tree = Record<string, unknown>;

function withDefault(tree: Tree, path: readonly string[], value: unknown): void {
  const [key, ...rest] = path;
  tree[key!] = rest.length === 0 ? value : (tree[key!] ?? {});
  if (rest.length > 0) withDefault(tree[key!] as Tree, rest, value);
}

describe('defaults', () => {
  test('each is listed as it would be written: written out, they make the same job and nothing is left to assume', () => {
    const { job } = readJob(SMALL, 'job.yaml', 'small');
    const listed = job!.defaults.filter(({ path }) => !IN_WORDS.test(path));
    const file = parse(SMALL) as Tree;
    for (const { path, figures } of listed) withDefault(file, path.split('.'), figures.value);
    // What the base gets and what breaks are listed as maps; written out they are.
    const [base, waste] = [file.base as Tree, file.waste as Tree];
    base.new = parse(String(base.new));
    waste.breakage = parse(String(waste.breakage));

    const { job: written, problems } = readJob(stringify(file), 'job.yaml', 'small');
    expect(problems).toEqual([]);
    expect(written!.defaults.filter(({ path }) => !IN_WORDS.test(path))).toEqual([]);
    const plain = (made: typeof job) =>
      JSON.parse(
        JSON.stringify(made, (key, value) => (key === 'defaults' || key === 'stated' ? undefined : value)),
      );
    expect(plain(written)).toEqual(plain(job));
  });

  test('a base is taken to be read on the floor that comes up, until the file tells otherwise', () => {
    const of = (base: string) => readJob(`${SMALL}base: ${base}\n`, 'job.yaml', 'small');
    const removed = 'below: boards, removed: {felt: 1/8 in, sheet vinyl: 1/8 in}';
    const read = of(`{${removed}, flatness: [1/8 in under 10 ft]}`).job!;
    expect(read.base.readOn).toBe('sheet vinyl');
    expect(read.defaults.map(({ path }) => path)).toContain('base.read on');
    expect(of(`{${removed}, read on: base, film: none}`).job!.base.readOn).toBe('boards');
    expect(of(`{${removed}}`).job!.base.readOn).toBeUndefined();
    expect(of('{below: boards, flatness: [1/8 in under 10 ft]}').job!.base.readOn).toBeUndefined();
    expect(of(`{${removed}, read on: moss}`).problems).toMatchObject([{ code: 'unknownLayer' }]);
  });

  test('the joint has none', () => {
    expect(readJob(SMALL.replace('joint: 1/8 in\n', ''), 'job.yaml', 'small').problems).toMatchObject([
      { code: 'missing', figures: { key: 'joint' } },
    ]);
  });

  // Common practice, no source: a sheet of 12 in of chips under 2 in takes the trowel of mosaic, not that of a tile of 12 in.
  test('the usual trowel for mosaic goes by its chips', () => {
    const of = (tile: string) =>
      readJob(SMALL.replace('{read: 12 in x 12 in}', tile), 'job.yaml', 'small').job!.products.mortar.notch;
    expect(of('{mosaic: {sheet: 12 in x 12 in, chips: 6 x 6}}')).toEqual(trowelFor(2 * TICKS_PER_INCH));
    expect(of('{mosaic: {sheet: 12 in x 12 in, chips: 3 x 1}}')).toEqual(trowelFor(12 * TICKS_PER_INCH));
  });

  // Common practice, no source: the trade's table and the default of the file must not drift apart.
  test.each([2, 4, 7.9, 8, 12, 15.9, 16, 24])('the usual trowel for a tile of %f in', (side) => {
    const ticks = side * TICKS_PER_INCH;
    expect(notch.read(usualNotch(ticks).inches)).toEqual({ ok: true, value: trowelFor(ticks) });
    expect(notch.read(usualNotch(ticks).mm)).toEqual({ ok: true, value: trowelFor(ticks, 'mm') });
  });
});
