import { describe, expect, test } from 'vitest';
import { figuresApart } from '../../src/sheets/figuresApart.ts';
import { demoTexts, sheetsOf } from './demos.ts';

/** A figure of that many lines, each with a soft joint where wanted. */
const { sheets } = sheetsOf('quarry-kitchen', demoTexts['quarry-kitchen']!, ['set-out']);
const figures = sheets[0]!.data as unknown as Parameters<typeof figuresApart>[0];
const placeOf = (lines: number, joints: number) =>
  figuresApart(
    {
      ...figures,
      lines: Array.from({ length: lines }, () => figures.lines[0]!),
      poles: [{ title: 'both ways', joints: Array.from({ length: joints }, (_, n) => ({ number: n + 1, distance: '2 1/8 in' })) }], // biome-ignore format: one pole
    },
    { widthMm: 180, heightMm: 120, belowMm: 22 },
    'letter',
    'portrait',
  );

const apart = (slug: string, paper: string) => {
  const text = demoTexts[slug]!.replace(/paper: \w+/, `paper: ${paper}`).replace('finished', 'underway');
  const [sheet] = sheetsOf(slug, text, ['set-out']).sheets;
  return (sheet!.data as { readonly apart: boolean }).apart;
};

describe('the figures of the set-out', () => {
  test('have a page of their own where they fill no more than one', () => {
    expect(['letter', 'a4'].map((paper) => apart('rowan-bath', paper))).toEqual([true, true]);
    // A4 lies 6 mm lower than letter paper: in larger type they would go on to a second page there.
    expect(['letter', 'a4'].map((paper) => apart('almond-hall', paper))).toEqual([true, false]);
  });

  test('begin under the drawing where they fit there, and where they take more than one page', () => {
    expect(['letter', 'a4'].map((paper) => apart('fernlea-boot-room', paper))).toEqual([false, false]);
    expect(['letter', 'a4'].map((paper) => apart('quarry-kitchen', paper))).toEqual([false, false]);
  });

  test('where they fill several, what follows the table stays with its last lines, unless it is half a page itself', () => {
    expect([placeOf(30, 4), placeOf(30, 160)]).toEqual(['on', 'through']);
  });
});
