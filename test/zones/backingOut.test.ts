import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { makeCuts } from '../../src/cuts/makeCuts.ts';
import type { Point, Ring } from '../../src/geometry/index.ts';
import type { SurfaceSpec } from '../../src/job/Job.ts';
import { makeZones } from '../../src/zones/makeZones.ts';
import { inch } from '../cuts/support/inches.ts';
import { type Floor, layFloor } from '../cuts/support/layFloor.ts';
import { testJob } from '../cuts/support/testJob.ts';
import { demos } from '../sheets/demos.ts';
import { judgeReach } from './support/judgeReach.ts';

const STEPPED_OVER = new Set(['flange', 'pipe']);

/** A room in inches, its door the first side, and what stands in it. */
interface Room {
  readonly corners: readonly Point[];
  readonly boxes: readonly (readonly Point[])[];
}

const box = (x: number, y: number, w: number, h: number): Point[] => [[x, y], [x + w, y], [x + w, y + h], [x, y + h]]; // biome-ignore format: a box on a line

/** The door from x = 40 to 76 in the lower wall of an L with an island that leaves 8 in to its inner corner. */
const KITCHEN: Room = {
  corners: [[40, 0], [76, 0], [171, 0], [171, 132], [80, 132], [80, 83], [0, 83], [0, 0]], // biome-ignore format: corners on a line
  boxes: [box(87, 52, 48, 27)],
};

/** Two arms over a hall, the door at the end of the left one. */
const TWO_ARMS: Room = {
  corners: [[44, 160], [0, 160], [0, 0], [120, 0], [120, 160], [76, 160], [76, 50], [44, 50]], // biome-ignore format: corners on a line
  boxes: [],
};

/** Turned by quarters, and mirrored first or not; the room stays on the left of its walls. */
function seen({ corners, boxes }: Room, quarters: number, mirrored: boolean): Room {
  const turned = ([x, y]: Point): Point => {
    let [a, b] = [mirrored ? 200 - x : x, y];
    for (let i = 0; i < quarters; i++) [a, b] = [200 - b, a];
    return [a, b];
  };
  const ring = (points: readonly Point[]) => {
    const all = points.map(turned);
    if (!mirrored) return all;
    const [one, two, ...rest] = all;
    return [two!, one!, ...rest.reverse()];
  };
  return { corners: ring(corners), boxes: boxes.map(ring) };
}

const scaled = (points: readonly Point[]): Ring => points.map(([x, y]) => [inch(x), inch(y)] as const);

function setOf(
  room: Room,
  zones: SurfaceSpec['zones'],
  tile: readonly [number, number],
  paceM2PerHour?: number,
) {
  const size = { length: inch(tile[0]), width: inch(tile[1]) };
  const floor: Floor = {
    outline: scaled(room.corners),
    gap: inch(1 / 4),
    joint: inch(3 / 16),
    tile: size,
    origin: [inch(3), inch(4)],
    boxes: room.boxes.map((ring, i) => ({ name: `island ${i}`, ring: scaled(ring) })),
    doors: { 0: 'hall' },
  };
  const work = { ...testJob().work, ...(paceM2PerHour && { paceM2PerHour }) };
  const job = testJob({ joint: floor.joint, work }, size, { zones });
  const layout = layFloor(floor);
  const made = makeZones(job, layout, makeCuts(job, layout));
  return { job, layout, zones: made, floor };
}

function stranded({ layout, zones, floor }: ReturnType<typeof setOf>): string[] {
  return judgeReach({
    outline: floor.outline,
    solids: (floor.boxes ?? []).map(({ ring }) => ring),
    door: [floor.outline[0]!, floor.outline[1]!],
    pieces: layout.pieces.map(({ id, shape }) => ({ id, ring: shape.outer })),
    zones: zones.map(({ pieces }) => pieces),
  });
}

const ways = [0, 1, 2, 3].flatMap((quarters) =>
  [false, true].map((mirrored) => [quarters, mirrored] as const),
);

describe('a setter backs out: no piece of a later zone is reached over tile that is set', () => {
  test.each(demos.map((demo) => [demo.slug, demo] as const))('%s', (_, { packet }) => {
    for (const surface of packet.surfaces) {
      const name = surface.zones[0]?.wayOut;
      const door = surface.edges.find(({ id }) => id === `${name}:line`);
      if (!door) continue;
      const solids = surface.obstacles
        .filter(({ edges }) => !edges.some(({ meets }) => STEPPED_OVER.has(meets)))
        .map(({ ring }) => ring);
      expect(
        judgeReach({
          outline: surface.outline,
          solids,
          door: [door.from, door.to],
          pieces: surface.pieces.map(({ id, shape }) => ({ id, ring: shape.outer })),
          zones: surface.zones.map(({ pieces }) => pieces),
        }),
      ).toEqual([]);
    }
  });

  test.each(ways)('an island that closes a strip, %d quarters on, mirrored: %s', (quarters, mirrored) => {
    const made = setOf(seen(KITCHEN, quarters, mirrored), { kind: 'count', count: 2 }, [11.75, 5.75]);
    expect(stranded(made)).toEqual([]);
    expect(made.zones).toHaveLength(2);
  });

  test.each(ways)('an arm beyond the hall, %d quarters on, mirrored: %s', (quarters, mirrored) => {
    const room = seen(TWO_ARMS, quarters, mirrored);
    for (const kind of ['count', 'auto'] as const) {
      const made = setOf(room, kind === 'auto' ? { kind } : { kind, count: 2 }, [11.75, 11.75], 0.75);
      expect([kind, stranded(made)]).toEqual([kind, []]);
    }
  });

  test('what is taken into a zone does not make it more than a working day where the job leaves their number open', () => {
    const { job, zones } = setOf(TWO_ARMS, { kind: 'auto' }, [11.75, 11.75], 0.75);
    const day = (job.work.endMinute - job.work.startMinute) / 60;
    expect(zones.length).toBeGreaterThan(2);
    for (const { hours } of zones) expect(hours).toBeLessThan(1.1 * day);
  });
});

describe('whatever stands on the floor', () => {
  const part = (least: number, most: number) => fc.integer({ min: least, max: most });
  const rooms = fc.record({
    room: fc.constantFrom(KITCHEN, TWO_ARMS),
    island: fc.tuple(part(60, 140), part(10, 70), part(10, 60), part(10, 40)),
    count: part(1, 4),
    tile: fc.constantFrom([11.75, 11.75] as const, [11.75, 5.75] as const, [23.75, 11.75] as const),
    way: fc.constantFrom(...ways),
  });

  test('every piece belongs to one zone and is reached from bare floor', () => {
    fc.assert(
      fc.property(rooms, ({ room, island, count, tile, way }) => {
        const furnished = room === KITCHEN ? { ...room, boxes: [box(...island)] } : room;
        const made = setOf(seen(furnished, ...way), { kind: 'count', count }, tile);
        expect(stranded(made)).toEqual([]);
        expect(made.zones.length).toBeLessThanOrEqual(count);
        expect(made.zones.flatMap(({ pieces }) => pieces).sort()).toEqual(
          made.layout.pieces.map(({ id }) => id).sort(),
        );
      }),
      { seed: 20270412, numRuns: process.env.LONG === '1' ? 300 : 15 },
    );
  });
});
