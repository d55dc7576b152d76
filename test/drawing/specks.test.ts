import { describe, expect, test } from 'vitest';
import { drawPlan, drawZone } from '../../src/drawing/index.ts';
import { scaleFor } from '../../src/drawing/Scale.ts';
import { specks } from '../../src/drawing/specks.ts';
import { shapeArea } from '../../src/geometry/index.ts';
import { demos } from '../sheets/demos.ts';
import { say } from './fixture.ts';
import { textsIn } from './readSvg.ts';

const space = { widthMm: 175, heightMm: 200 };
const surfaces = demos.flatMap(({ slug, packet }) =>
  packet.surfaces.map((surface) => [slug, packet, surface] as const),
);
const namesIn = (svg: string) => textsIn(svg).map(({ words }) => words);

describe.each(surfaces)(
  'pieces too small to be found by their look, in plans of %s',
  (_, packet, surface) => {
    const options = { id: 'one', label: 'one', ...packet.spec.print, say, space };
    /** The six smallest of those on which no stroke of a hatch falls: squares of 2 1/2 mm on paper. */
    const tiny = (ratio: number) => {
      const small = surface.pieces.flatMap(({ id, whole, shape }) => {
        const side = Math.sqrt(shapeArea(shape)) / 320 / ratio;
        return !whole && side < 2.5 ? [{ id, side }] : [];
      });
      const inOrder = small.sort((a, b) => a.side - b.side);
      return inOrder.slice(0, 6).map(({ id }) => id);
    };

    test('are named on the layout', () => {
      for (const numbers of [false, true]) {
        const { svg, ratio } = drawPlan(surface, { ...options, numbers });
        expect(namesIn(svg)).toEqual(expect.arrayContaining(tiny(ratio!)));
      }
    });

    test('are named on the overview of a layout on several pages', () => {
      const parts = {
        orientation: 'portrait',
        ratio: 10,
        border: 14,
        columns: [],
        rows: [],
        parts: [],
      } as never;
      const { svg, ratio } = drawPlan(surface, { ...options, parts });
      expect(namesIn(svg)).toEqual(expect.arrayContaining(tiny(ratio!)));
    });

    test('are named in their zone', () => {
      for (const zone of surface.zones) {
        const { svg, ratio } = drawZone(surface, zone, options);
        expect(namesIn(svg)).toEqual(
          expect.arrayContaining(tiny(ratio!).filter((id) => zone.pieces.includes(id))),
        );
      }
    });
  },
);

test('pieces are too small by their area or their width on paper, the smallest dozen of a plan that is too small itself', () => {
  const [{ packet }] = demos as [(typeof demos)[number]];
  const { pieces, outline } = packet.surfaces[0]!;
  const at = (ratio: number) => specks(pieces, scaleFor(outline, 0, ratio, [0, 0])).size;
  expect(at(1)).toBe(0);
  expect(Array.from({ length: 60 }, (_, i) => at(20 + 2 * i)).some((count) => count > 0)).toBe(true);
  expect(at(1000)).toBe(12);
});
