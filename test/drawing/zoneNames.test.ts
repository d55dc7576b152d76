import { describe, expect, test } from 'vitest';
import { overlap, segmentMeets } from '../../src/drawing/boxes.ts';
import { drawZone } from '../../src/drawing/index.ts';
import { kneelOutside, type ZoneOnPaper } from '../../src/drawing/kneelSign.ts';
import type { Mark } from '../../src/drawing/Mark.ts';
import { markBounds } from '../../src/drawing/markBounds.ts';
import { doorLine } from '../../src/drawing/roomMarks.ts';
import { scaleFor } from '../../src/drawing/Scale.ts';
import { takenBy } from '../../src/drawing/takenBy.ts';
import { beginArrow, wayOutArrow } from '../../src/drawing/zoneArrows.ts';
import { demos } from '../sheets/demos.ts';
import { bootRoom, say, surfaceOf } from './fixture.ts';
import { textsIn } from './readSvg.ts';

const zones = demos.flatMap(({ slug, packet }) =>
  packet.surfaces.flatMap((surface) =>
    surface.zones.map((zone) => [`${slug} ${zone.number}`, packet, surface, zone] as const),
  ),
);
/** From a page with room for a large plan to one that leaves it a strip. */
const heights = [190, 130, 80];

describe.each(zones)('the plan of zone %s', (_, packet, surface, zone) => {
  const plans = heights.map((heightMm) =>
    drawZone(surface, zone, {
      id: 'one',
      label: 'one',
      ...packet.spec.print,
      say,
      space: { widthMm: 175, heightMm },
    }),
  );
  const own = surface.pieces.filter(({ id }) => zone.pieces.includes(id));

  test('names the first and the last piece at every size', () => {
    for (const { svg } of plans) {
      const words = textsIn(svg).map((one) => one.words);
      expect(words).toEqual(expect.arrayContaining([zone.first, zone.last]));
    }
  });

  test('tells every piece it does not name, and every cut without its number; where tiles are counted, the cut ones', () => {
    for (const { svg, unnamed, counted } of plans) {
      const words = textsIn(svg).map((one) => one.words);
      const missing = own.filter(({ id, whole }) => !words.includes(id) && !(counted && whole));
      expect(missing.map(({ id }) => id).filter((id) => !unnamed.includes(id))).toEqual([]);
      const numbers = words.filter((one) => /^\d+$/.test(one)).length;
      const told = own.filter(({ id, cut }) => cut !== null && !unnamed.includes(id)).length;
      expect(numbers).toBeGreaterThanOrEqual(told);
    }
  });
});

describe('the arrows of a zone', () => {
  const surface = surfaceOf(bootRoom);
  const zone = surface.zones[1]!;
  const scale = scaleFor(surface.outline, surface.turn, 24, [14, 14]);
  const on: ZoneOnPaper = { surface, zone, scale };
  const shaftOf = (marks: readonly Mark[]) =>
    marks.flatMap((mark) =>
      mark.mark === 'path' ? [mark.steps as readonly (readonly [number, number])[]] : [],
    )[0]!;

  test('out of the doorway lies on no piece', () => {
    const line = doorLine(surface, 'hall', scale)!;
    for (const share of [0.25, 0.5, 0.75]) {
      const box = markBounds(wayOutArrow(surface, zone, scale, share));
      expect(segmentMeets(line[0], line[1], box)).toBe(false);
    }
  });

  test('at the first piece runs over no words, and is left out where they are everywhere', () => {
    const [free] = [shaftOf(beginArrow(on, []))];
    const word = {
      left: free[0]![0] - 1,
      right: free[0]![0] + 1,
      bottom: free[0]![1] - 1,
      top: free[0]![1] + 1,
    };
    const moved = shaftOf(beginArrow(on, [word]));
    expect(segmentMeets(moved[0]!, moved[1]!, word)).toBe(false);
    expect(beginArrow(on, [{ left: 0, right: 300, bottom: 0, top: 300 }])).toEqual([]);
  });

  test('does not run through the sign to kneel', () => {
    const arrow = wayOutArrow(surface, zone, scale, 0.5);
    const taken = takenBy(arrow);
    const box = markBounds(arrow);
    const paper = { left: 0, bottom: 0, right: 300, top: 300 };
    const sign = kneelOutside(on, { boxes: [...taken.boxes, box], lines: taken.lines, paper }, 'kneel')!;
    expect(overlap(markBounds(sign.slice(0, 2)), box)).toBe(false);
    expect(overlap(markBounds(sign.slice(2)), box)).toBe(false);
  });

  test('the knees kneel in the opening, not in front of its wall', () => {
    const [a, b] = doorLine(surface, 'hall', scale)!;
    const sign = kneelOutside(
      on,
      { boxes: [], lines: [], paper: { left: 0, bottom: 0, right: 300, top: 300 } },
      'kneel',
    )!;
    const knees = sign.flatMap((mark) => (mark.mark === 'circle' ? [mark.centre] : []));
    const long = Math.hypot(b[0] - a[0], b[1] - a[1]);
    for (const [x, y] of knees) {
      const along = ((x - a[0]) * (b[0] - a[0]) + (y - a[1]) * (b[1] - a[1])) / long;
      expect(along).toBeGreaterThan(0);
      expect(along).toBeLessThan(long);
    }
  });
});
