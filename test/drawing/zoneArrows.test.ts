import { expect, test } from 'vitest';
import { within } from '../../src/drawing/boxes.ts';
import { markBounds } from '../../src/drawing/markBounds.ts';
import { scaleFor } from '../../src/drawing/Scale.ts';
import { surfacePoints } from '../../src/drawing/surfaceScale.ts';
import { wayOutArrow, wayOutWithin } from '../../src/drawing/zoneArrows.ts';
import { demos } from '../sheets/demos.ts';

const zones = demos.flatMap(({ slug, packet }) =>
  packet.surfaces.flatMap((surface) =>
    surface.zones
      .filter(({ wayOut }) => wayOut !== undefined)
      .map((zone) => ({ slug, surface, zone, number: zone.number })),
  ),
);

test.each(zones)(
  'the arrow out of zone $number of $slug has its head however little paper there is, or is not there',
  ({ surface, zone }) => {
    const scale = scaleFor(surfacePoints(surface), surface.turn, 16, [0, 0]);
    const [shaft, head] = wayOutArrow(surface, zone, scale, 0.5).map((mark) => markBounds([mark]));
    const all = markBounds(wayOutArrow(surface, zone, scale, 0.5));
    const counts = Array.from({ length: 40 }, (_, i) => {
      const less = i / 4;
      const box = {
        left: all.left + less,
        right: all.right - less,
        bottom: all.bottom + less,
        top: all.top - less,
      };
      const wide = { left: -1e4, right: 1e4, bottom: -1e4, top: 1e4 };
      const isLevel = all.right - all.left > all.top - all.bottom;
      const paper = isLevel
        ? { ...wide, left: box.left, right: box.right }
        : { ...wide, bottom: box.bottom, top: box.top };
      const marks = wayOutWithin(surface, zone, scale, less === 0 ? wide : paper);
      if (marks.length > 0 && less > 0) expect(within(markBounds(marks), paper)).toBe(true);
      return marks.length;
    });
    expect([shaft, head]).not.toContain(undefined);
    expect(counts[0]).toBe(2);
    expect(counts.at(-1)).toBe(0);
    expect(counts.every((count) => count === 0 || count === 2)).toBe(true);
  },
);
