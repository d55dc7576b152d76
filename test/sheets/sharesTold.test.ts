import { describe, expect, test } from 'vitest';
import { demoTexts, inLanguage, sheetsOf } from './demos.ts';

/** Ticks of a size as print tells it: `6 5/8 in`, `88 mm`. */
function ticksOf(size: string): number {
  const [, whole = '0', over = '0', under = '1', unit] =
    /^(?:([\d.]+)(?: |$))?(?:(\d+)\/(\d+) )?(in|mm)$/.exec(size)!;
  return (Number(whole) + Number(over) / Number(under)) * (unit === 'in' ? 8128 : 320);
}

/** All texts of a sheet's data, its drawings among them. */
function textsOf(data: unknown): string[] {
  if (typeof data === 'string') return [data];
  return data !== null && typeof data === 'object' ? Object.values(data).flatMap(textsOf) : [];
}

const TOLD = /((?:\d+(?:\.\d+)? )?(?:\d+\/\d+ )?(?:in|mm))(?: ·|,) (\d+) %(?! of the floor)/g;

const extent = (values: readonly number[]) => Math.max(...values) - Math.min(...values);

describe.each(Object.entries(demoTexts))('a size told with its share of a tile in %s', (slug, text) => {
  const { packet, sheets } = sheetsOf(slug, inLanguage(text, 'en'));
  const sides = packet.surfaces.flatMap(({ pattern }) =>
    pattern.tiles.flatMap(({ ring }) => [extent(ring.map(([x]) => x)), extent(ring.map(([, y]) => y))]),
  );
  const told = sheets.flatMap(({ name, data }) =>
    textsOf(data).flatMap((words) =>
      [...words.matchAll(TOLD)].map(([, size, percent]) => ({ name, size: size!, percent: Number(percent) })),
    ),
  );

  test('whoever divides the size that is printed by a side of the tile finds the share that is printed', () => {
    expect(told.length).toBeGreaterThan(0);
    const wrong = told.filter(
      ({ size, percent }) => !sides.some((side) => Math.round((100 * ticksOf(size)) / side) === percent),
    );
    expect(wrong).toEqual([]);
  });

  test('one size has one share of one side, on whichever sheet it is told', () => {
    const shares = new Map<string, Set<number>>();
    for (const { size, percent } of told) shares.set(size, (shares.get(size) ?? new Set()).add(percent));
    expect([...shares].filter(([, percents]) => percents.size > new Set(sides).size)).toEqual([]);
  });
});
