import { describe, expect, test } from 'vitest';
import { demoTexts, sheetsOf } from './demos.ts';

const apart = (slug: string, paper: string) => {
  const text = demoTexts[slug]!.replace(/paper: \w+/, `paper: ${paper}`).replace('finished', 'underway');
  const [sheet] = sheetsOf(slug, text, ['set-out']).sheets;
  return (sheet!.data as { readonly apart: boolean }).apart;
};

describe('the figures of the set-out', () => {
  test('have a page of their own where they fill no more than one', () => {
    expect(['letter', 'a4'].map((paper) => apart('rowan-bath', paper))).toEqual([true, true]);
    expect(['letter', 'a4'].map((paper) => apart('almond-hall', paper))).toEqual([true, true]);
  });

  test('begin under the drawing where they fit there, and where they take more than one page', () => {
    expect(['letter', 'a4'].map((paper) => apart('fernlea-boot-room', paper))).toEqual([false, false]);
    expect(['letter', 'a4'].map((paper) => apart('quarry-kitchen', paper))).toEqual([false, false]);
  });
});
