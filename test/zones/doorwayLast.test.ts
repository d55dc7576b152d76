import { describe, expect, test } from 'vitest';
import { makeCuts } from '../../src/cuts/makeCuts.ts';
import { type Point, type Ring, whereInRing } from '../../src/geometry/index.ts';
import type { SurfaceSpec } from '../../src/job/Job.ts';
import type { Layout } from '../../src/layout/Layout.ts';
import { makeZones } from '../../src/zones/makeZones.ts';
import { inch } from '../cuts/support/inches.ts';
import { type Floor, layFloor } from '../cuts/support/layFloor.ts';
import { testJob } from '../cuts/support/testJob.ts';

/** A room of 184 × 150 in with its only doorway from x = 70 to 104 in its lower wall, which is 4 in deep there. */
const CORNERS: readonly Point[] = [[70, -4], [104, -4], [104, 0], [184, 0], [184, 150], [0, 150], [0, 0], [70, 0]]; // biome-ignore format: corners on a line
/** What one works through, for two days or more: from jamb to jamb, and 24 in of floor behind the wall's face, less 4 in; common practice, no source. */
const STRIP = { minX: 70, maxX: 104, minY: -4, maxY: 20 };

type See = (point: Point) => Point;
const ways = [0, 1, 2, 3].flatMap((quarters) =>
  [false, true].map((mirrored) => {
    const see: See = ([x, y]) => {
      let [a, b] = [mirrored ? 200 - x : x, y];
      for (let i = 0; i < quarters; i++) [a, b] = [200 - b, a];
      return [a, b];
    };
    return { quarters, mirrored, see };
  }),
);

function outlineOf(see: See, mirrored: boolean): Ring {
  const seen = CORNERS.map(see).map(([x, y]): Point => [inch(x), inch(y)]);
  if (!mirrored) return seen;
  const [one, two, ...rest] = seen;
  return [two!, one!, ...rest.reverse()];
}

/** The sides beside the door's line are its jambs. */
function withJambs(layout: Layout): Layout {
  const { edges } = layout.frame;
  const named = edges.map((edge, i) => {
    const side = { 1: 'left', [edges.length - 1]: 'right' }[i];
    return side ? { ...edge, id: `dining:${side}`, name: 'dining' } : edge;
  });
  return { ...layout, frame: { ...layout.frame, edges: named } };
}

function setOf({ see, mirrored }: (typeof ways)[number], zones: SurfaceSpec['zones'], shift = 0) {
  const tile = { length: inch(17.75), width: inch(11.75) };
  const floor: Floor = {
    outline: outlineOf(see, mirrored),
    gap: inch(1 / 4),
    joint: inch(1 / 8),
    tile,
    origin: [inch(92), inch(75)],
    ...(shift > 0 && { shift: inch(shift) }),
    doors: { 0: 'dining' },
  };
  const job = testJob({ joint: floor.joint }, tile, { zones });
  const layout = withJambs(layFloor(floor));
  return { layout, zones: makeZones(job, layout, makeCuts(job, layout)) };
}

/** Spots of the strip, 4 in off its jambs at least, over which some pieces lie. */
function laidIn(see: See, rings: readonly Ring[]): Point[] {
  const spots: Point[] = [];
  for (let x = STRIP.minX + 4; x <= STRIP.maxX - 4; x++)
    for (let y = STRIP.minY + 1; y <= STRIP.maxY; y++) spots.push([x, y]);
  return spots.filter((spot) => {
    const [x, y] = see(spot);
    return rings.some((ring) => whereInRing([inch(x), inch(y)], ring) === 'inside');
  });
}

describe('the only doorway stays free of tile until the last zone', () => {
  test.each(ways)('$quarters quarters on, mirrored: $mirrored', (way) => {
    for (const shift of [0, 5.9]) {
      for (const count of [2, 3, 5]) {
        const { layout, zones } = setOf(way, { kind: 'count', count }, shift);
        const last = new Set(zones.at(-1)!.pieces);
        const ringsOf = (isLast: boolean) =>
          layout.pieces.filter(({ id }) => last.has(id) === isLast).map(({ shape }) => shape.outer);
        expect([shift, count, laidIn(way.see, ringsOf(false))]).toEqual([shift, count, []]);
        expect(laidIn(way.see, ringsOf(true)).length).toBeGreaterThan(500);
        expect(zones.flatMap(({ pieces }) => pieces).sort()).toEqual(
          layout.pieces.map(({ id }) => id).sort(),
        );
        const areas = zones.map(({ areaM2 }) => areaM2);
        const mean = areas.reduce((sum, one) => sum + one, 0) / zones.length;
        expect(Math.max(...areas)).toBeLessThan(1.5 * mean);
      }
    }
  });

  test('its seam goes round the strip, from joint to joint', () => {
    const { zones } = setOf(ways[0]!, { kind: 'count', count: 2 });
    const turns = zones[0]!.seam!.map(
      ({ from, to }) => Math.abs(from[0] - to[0]) < Math.abs(from[1] - to[1]),
    );
    expect(new Set(turns)).toEqual(new Set([true, false]));
  });
});
