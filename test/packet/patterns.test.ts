import { describe, expect, test } from 'vitest';
import { distanceShapes } from '../../src/geometry/index.ts';
import { makePattern } from '../../src/pattern/index.ts';
import { sheetTexts } from '../cases/support/sheetTexts.ts';
import { areaOf } from '../pattern/support/cells.ts';
import { patternJobs, patternPacket } from './support/patternFloors.ts';

type Point = readonly [number, number];

const made = patternJobs().map(([name, job]) => {
  const packet = patternPacket(job);
  return [name, { job, packet, texts: sheetTexts(packet) }] as const;
});

/** A ring turned by degrees about the origin, then moved. */
const placed = (ring: readonly Point[], turn: number, at: Point): Point[] =>
  ring.map(([x, y]) => {
    const [cos, sin] = [Math.cos((turn * Math.PI) / 180), Math.sin((turn * Math.PI) / 180)];
    return [x * cos - y * sin + at[0], x * sin + y * cos + at[1]];
  });

/** How far a point lies inside a convex ring, at the least; less than 0 outside. */
const depthIn = (ring: readonly Point[], [x, y]: Point) =>
  Math.min(
    ...ring.map(([px, py], i) => {
      const [qx, qy] = ring[(i + 1) % ring.length]!;
      return ((qx - px) * (y - py) - (qy - py) * (x - px)) / Math.hypot(qx - px, qy - py);
    }),
  );

describe.each(made)('a floor in %s', (_, { job, packet, texts }) => {
  const surface = packet.surfaces[0]!;
  const pattern = makePattern(job.surfaces[0]!.pattern, job.tiles, job.joint);

  test('needs of each tile as many as lie on it: whole ones, and those that cuts come out of', () => {
    for (const plan of Object.values(packet.tiles)) {
      const own = surface.pieces.filter(({ tile }) => tile === plan.tile);
      expect(own.length).toBe(plan.whole + plan.cut);
      expect(plan.needed).toBe(plan.whole + plan.from.length);
      expect(plan.bound).toBeLessThanOrEqual(plan.needed);
      const served = plan.from.flatMap(({ pieces }) => pieces.map(({ piece }) => piece));
      expect(served.sort()).toEqual(own.flatMap(({ id, whole }) => (whole ? [] : [id])).sort());
    }
    expect(Object.keys(packet.tiles).sort()).toEqual(
      [...new Set(pattern.tiles.map(({ tile }) => tile))].sort(),
    );
  });

  test('takes no piece from outside its tile, and two of one tile lie a kerf apart', () => {
    for (const plan of Object.values(packet.tiles)) {
      const ring = ownRing(plan.tile);
      for (const { pieces } of plan.from) {
        const rings = pieces.map(({ cut, turn, at }) => {
          const { shape } = surface.cuts.find(({ number }) => number === cut)!;
          return placed(shape.outer, turn, at);
        });
        // Equal cuts differ by what the saw's step hides.
        for (const point of rings.flat()) expect(depthIn(ring, point)).toBeGreaterThan(-2 * job.print.step);
        rings.forEach((one, i) => {
          for (const other of rings.slice(i + 1))
            expect(distanceShapes({ outer: one, holes: [] }, { outer: other, holes: [] })).toBeGreaterThan(
              job.saw.kerf - 2 * job.print.step,
            );
        });
      }
    }
  });

  /** A whole tile in its own axes, as the job file measures it. */
  function ownRing(key: string): readonly Point[] {
    const { length, width, shape } = job.tiles.find((tile) => tile.key === key)!;
    const box: Point[] = [[0, 0], [length, 0], [length, width], [0, width]]; // biome-ignore format: a ring on a line
    if (!shape) return box;
    const { ring } = pattern.tiles.find(({ tile }) => tile === key)!;
    const [minX, minY] = [Math.min(...ring.map(([x]) => x)), Math.min(...ring.map(([, y]) => y))];
    return ring.map(([x, y]): Point => [x - minX, y - minY]);
  }

  // Arithmetic: what one repeat has that is no tile, as deep as the tile, on the floor's area.
  test('asks for grout by the joints of the pattern', () => {
    const { a, b, tiles } = surface.pattern;
    const share = 1 - tiles.reduce((sum, { ring }) => sum + areaOf(ring), 0) / (a[0] * b[1] - a[1] * b[0]);
    const litres = share * (job.tiles[0]!.thickness / 320) * surface.areaM2;
    const grout = packet.materials.find(({ what }) => what === 'grout')!;
    expect(grout.amount / (litres * job.products.grout.kgPerLitre)).toBeCloseTo(1.1, 2);
  });

  test('has its sheets, with a word for all that is said on them', () => {
    expect(Object.keys(texts).length).toBeGreaterThan(15);
    expect(Object.values(texts).filter((text) => /undefined|NaN|\bfault\.\w+/.test(text))).toEqual([]);
  });
});

describe('a floor whose pattern does not quite close', () => {
  test('is laid, and its sheets say which size would close and how wide the joints become', () => {
    const [, { packet, texts }] = made.find(([name]) => name.includes('quite close'))!;
    expect(packet.surfaces[0]!.faults.find(({ code }) => code === 'jointsVary')!.figures).toMatchObject({
      needs: 66040,
      least: 1016,
      most: 1524,
    });
    expect(texts.alternatives).toContain('With 8 1/8 in all joints would be alike');
  });
});
