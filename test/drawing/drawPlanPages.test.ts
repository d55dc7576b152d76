import { describe, expect, test } from 'vitest';
import { drawPlan } from '../../src/drawing/drawPlan.ts';
import { drawPlanPages } from '../../src/drawing/drawPlanPages.ts';
import { ratios } from '../../src/drawing/pickScale.ts';
import { bootRoom, type FixtureRoom, say, surfaceOf } from './fixture.ts';
import { clashes, faultsOf, textsIn } from './readSvg.ts';

const space = { portrait: { widthMm: 175, heightMm: 190 }, landscape: { widthMm: 235, heightMm: 130 } };
const options = { id: 'plan', label: 'plan', system: 'inches', say, step: 508, space } as const;

const pagesOf = (room: FixtureRoom) => {
  const surface = surfaceOf(room);
  return { surface, plan: drawPlanPages(surface, drawPlan(surface, options), options) };
};

const rooms: Readonly<Record<string, FixtureRoom>> = {
  'small tiles': { ...bootRoom, tile: [36000, 18000] },
  mosaic: { ...bootRoom, tile: [22000, 22000], joint: 640 },
  'small tiles at 30°': { ...bootRoom, tile: [36000, 18000], turn: 30 },
};

test('a plan that can be read on one page stays on it', () => {
  expect(pagesOf(bootRoom).plan).toBeUndefined();
});

describe.each(Object.entries(rooms))('the plan on several pages of %s', (_name, room) => {
  const { surface, plan } = pagesOf(room);
  const pages = plan!.pages;
  const texts = pages.map(({ drawing }) => textsIn(drawing.svg));
  const written = pages.flatMap(({ drawing }, i) => [
    ...texts[i]!.map(({ words }) => words),
    ...drawing.unnamed,
  ]);

  test('is drawn at a scale of the stated list, larger than on one page', () => {
    expect(ratios.inches).toContain(plan!.parts.ratio);
    expect(plan!.parts.ratio).toBeLessThan(drawPlan(surface, options).ratio!);
    expect(pages.map(({ drawing }) => drawing.ratio)).toEqual(pages.map(() => plan!.parts.ratio));
  });

  test('fits its pages', () => {
    const { widthMm, heightMm } = space[plan!.parts.orientation];
    const off = pages.filter(
      ({ drawing }) => drawing.widthMm > widthMm + 0.3 || drawing.heightMm > heightMm + 0.3,
    );
    expect(off).toEqual([]);
  });

  test('gives the name of every piece once over all pages', () => {
    const wrong = surface.pieces.filter(({ id }) => written.filter((words) => words === id).length !== 1);
    expect(wrong.map(({ id }) => id)).toEqual([]);
  });

  test('leaves few names to the list under a page', () => {
    expect(pages.filter(({ drawing }) => drawing.unnamed.length > 6)).toEqual([]);
  });

  test('names each match line on both of its pages', () => {
    const lines = pages.flatMap(({ part }) => Object.values(part.next).map((next) => [part.number, next]));
    const missing = lines.filter(([number, next]) => {
      const words = `match ${Math.min(number!, next!)} ${Math.max(number!, next!)}`;
      return ![number!, next!].every((one) => texts[one - 1]!.some((text) => text.words === words));
    });
    expect(lines.length).toBeGreaterThan(1);
    expect(missing).toEqual([]);
  });

  test('is well-formed, with no words on other words or off the paper', () => {
    for (const [i, { drawing }] of pages.entries()) {
      expect(faultsOf(drawing.svg)).toEqual([]);
      expect(clashes(texts[i]!)).toEqual([]);
      const off = texts[i]!.filter(
        ({ left, right, top, bottom }) =>
          left < 0 || top < 0 || right > drawing.widthMm || bottom > drawing.heightMm,
      );
      expect(off).toEqual([]);
    }
  });
});
