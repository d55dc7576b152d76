import { describe, expect, test } from 'vitest';
import { demos } from './demos.ts';

interface Base {
  readonly marks: readonly string[];
  readonly drawing: string;
}

describe.each(demos)('a caption of $slug', ({ packet, sheets }) => {
  const dataOf = <T>(name: string) =>
    sheets.filter(({ template }) => template === name).map(({ data }) => data as T);

  test('names of the base what is found there, and no more', () => {
    dataOf<Base>('base-sheet').forEach(({ marks, drawing }, i) => {
      const { base } = packet.surfaces[i]!;
      const [cracks, hollow, joints] = [base?.cracks ?? [], base?.hollow ?? [], base?.joints ?? []];
      // Dots are a hatch of their own.
      expect(marks.includes('hollow')).toBe(drawing.includes('-hidden"'));
      expect(marks.includes('hollow')).toBe(hollow.length > 0);
      expect(marks.includes('still')).toBe(cracks.some(({ moving }) => !moving));
      expect(marks.includes('carried')).toBe(joints.length > 0 || cracks.some(({ moving }) => moving));
    });
  });

  test('names triangles of the tile sheet only where one pass frees two pieces', () => {
    for (const { triangles, drawn, last } of dataOf<
      Record<'drawn' | 'last', { passes: unknown[] }[]> & { triangles: boolean }
    >('tile-sheet'))
      expect(triangles).toBe([...drawn, ...last].some(({ passes }) => passes.length > 0));
  });
});

test('some sheet names each of them', () => {
  const base = demos.flatMap(({ sheets }) =>
    sheets.filter(({ template }) => template === 'base-sheet').map(({ data }) => (data as Base).marks),
  );
  expect(new Set(base.flat())).toEqual(new Set(['carried', 'still', 'hollow', 'ring']));
});
