import { describe, expect, test } from 'vitest';
import { makeCuts } from '../../src/cuts/makeCuts.ts';
import { distancePointSegment, type Point, type Ring } from '../../src/geometry/index.ts';
import { makeZones } from '../../src/zones/makeZones.ts';
import { inch } from '../cuts/support/inches.ts';
import { type Floor, layFloor } from '../cuts/support/layFloor.ts';
import { testJob } from '../cuts/support/testJob.ts';
import { demos } from '../sheets/demos.ts';
import { judgeShutOff, type Measures, type ZoneToBegin } from './support/judgeShutOff.ts';

const STEPPED_OVER = new Set(['flange', 'pipe']);
/** A grid of inches is off by one at each edge: what is shut off for a slim setter with long arms is, and for a stout one with short arms nothing is missed. */
const SURELY: Measures = { half: 4.5, reach: 24, by: 18 };
const PERHAPS: Measures = { half: 7, reach: 16, by: 23 };
/** The judge walks along the axes only, and to the near side of a piece. */
const NEARLY = 0.8;

interface Told {
  readonly beyond: string | undefined;
  readonly zone: ZoneToBegin & { readonly last?: string };
}

function holdAgainst({ beyond, zone }: Told): void {
  const surely = judgeShutOff(zone, SURELY);
  const perhaps = judgeShutOff(zone, PERHAPS);
  if (beyond === undefined) expect(surely.map(({ id }) => id)).toEqual([]);
  else {
    expect(perhaps.map(({ id }) => id)).toContain(beyond);
    const { walk } = perhaps.find(({ id }) => id === beyond)!;
    for (const one of surely) expect([one.id, walk]).toEqual([one.id, Math.max(walk, NEARLY * one.walk)]);
  }
}

const demoZones = demos.flatMap(({ slug, packet }) =>
  packet.surfaces.flatMap((surface) => {
    const door = surface.edges.find(({ id }) => id === `${surface.zones[0]?.wayOut}:line`);
    if (!door) return [];
    const ringOf = (name: string) => surface.pieces.find(({ id }) => id === name)!.shape.outer;
    const solids = surface.obstacles.filter(
      ({ edges }) => !edges.some(({ meets }) => STEPPED_OVER.has(meets)),
    );
    return surface.zones.map((zone, i) => ({
      slug,
      number: zone.number,
      beyond: zone.beyond,
      zone: {
        outline: surface.outline,
        solids: solids.map(({ ring }) => ring),
        door: [door.from, door.to] as const,
        laid: surface.zones.slice(0, i).flatMap(({ pieces }) => pieces.map(ringOf)),
        own: zone.pieces.map((id) => ({ id, ring: ringOf(id) })),
        first: zone.first,
      },
    }));
  }),
);

describe('a part of a zone that its first piece shuts off', () => {
  test.each(demoZones)('is told as a flood of the floor finds it: $slug $number', holdAgainst);

  test('is the end of the kitchen behind its island, whose far side is 52 and 27 in off A-B, and is told', () => {
    const kitchen = demoZones.find(({ slug, number }) => slug === 'quarry-kitchen' && number === 1)!;
    const surface = demos.find(({ slug }) => slug === 'quarry-kitchen')!.packet.surfaces[0]!;
    const { from, to } = surface.edges.find(({ id }) => id === 'A-B')!;
    const far = kitchen.zone.own.find(({ id }) => id === kitchen.beyond)!.ring;
    for (const point of far) expect(distancePointSegment(point, from, to)).toBeGreaterThan(inch(52 + 27));
  });
});

const box = (x: number, y: number, w: number, h: number): Point[] => [[x, y], [x + w, y], [x + w, y + h], [x, y + h]]; // biome-ignore format: a box on a line
const scaled = (points: readonly Point[]): Ring => points.map(([x, y]) => [inch(x), inch(y)] as const);

function turnedPlace([x, y]: Point, quarters: number, mirrored: boolean): Point {
  let [a, b] = [mirrored ? 240 - x : x, y];
  for (let i = 0; i < quarters; i++) [a, b] = [240 - b, a];
  return [a, b];
}

/** Turned by quarters, and mirrored first or not; the door stays the first side, the room on the left of its walls. */
function seen(corners: readonly Point[], quarters: number, mirrored: boolean): readonly Point[] {
  const [one, two, ...rest] = corners.map((corner) => turnedPlace(corner, quarters, mirrored));
  return mirrored ? [two!, one!, ...rest.reverse()] : [one!, two!, ...rest];
}

/** A floor of one zone whose chalk lines cross at a place in inches; its door is the first side. */
function begun(corners: readonly Point[], boxes: readonly (readonly Point[])[], [x, y]: Point): Told {
  const size = { length: inch(11.75), width: inch(5.75) };
  const floor: Floor = {
    outline: scaled(corners),
    gap: inch(1 / 4),
    joint: inch(3 / 16),
    tile: size,
    origin: [inch(x), inch(y)],
    boxes: boxes.map((ring, i) => ({ name: `island ${i}`, ring: scaled(ring) })),
    doors: { 0: 'hall' },
  };
  const job = testJob({ joint: floor.joint }, size, { zones: { kind: 'count', count: 1 } });
  const layout = layFloor(floor);
  const [zone] = makeZones(job, layout, makeCuts(job, layout));
  const own = layout.pieces.map(({ id, shape }) => ({ id, ring: shape.outer }));
  return {
    beyond: zone!.beyond,
    zone: {
      outline: floor.outline,
      solids: (floor.boxes ?? []).map(({ ring }) => ring),
      door: [floor.outline[0]!, floor.outline[1]!],
      laid: [],
      own,
      first: zone!.first,
      last: zone!.last,
    },
  };
}

/** A room with its door below, and a room beyond it that is entered through a corridor of 36 in. */
const TWO_ROOMS: readonly Point[] = [
  [70, 0], [106, 0], [176, 0], [176, 80], [106, 80], [106, 110], [176, 110], [176, 190], [0, 190], [0, 110], [70, 110], [70, 80], [0, 80], [0, 0],
]; // biome-ignore format: corners on a line

const ways = [0, 1, 2, 3].flatMap((quarters) =>
  [false, true].map((mirrored) => [quarters, mirrored] as const),
);

describe('where the first piece lies', () => {
  test.each(ways)(
    'in the mouth of a corridor the room beyond is set first, %d quarters on, mirrored: %s',
    (quarters, mirrored) => {
      const corners = seen(TWO_ROOMS, quarters, mirrored);
      const told = begun(corners, [], turnedPlace([88, 92], quarters, mirrored));
      expect(told.beyond).toBeDefined();
      holdAgainst(told);
    },
  );

  // The door lies in the room's first side: the lines cross before it, and the first piece is the one that is left by last.
  test('before the door all else is set first, from where one has farthest to walk', () => {
    const corners = [
      [60, 0],
      [90, 0],
      [144, 0],
      [144, 144],
      [0, 144],
      [0, 0],
    ] as const;
    const { beyond, zone } = begun(corners, [], [69, 0.25]);
    const far = zone.own.find(({ id }) => id === beyond);
    expect(zone.first).toBe(zone.last);
    expect(Math.min(...far!.ring.map(([, y]) => y))).toBeGreaterThan(inch(130));
  });

  test('in the middle of a wide room nothing is shut off', () => {
    const told = begun(box(0, 0, 144, 144), [], [72, 72]);
    expect(told.beyond).toBeUndefined();
    holdAgainst(told);
  });

  test('before an island that one can pass on its other side nothing is shut off, and where one cannot all behind it is', () => {
    const room: readonly Point[] = [[20, 0], [56, 0], [160, 0], [160, 200], [0, 200], [0, 0]]; // biome-ignore format: corners on a line
    const open = begun(room, [box(50, 70, 70, 40)], [140, 90]);
    expect(open.beyond).toBeUndefined();
    holdAgainst(open);
    const closed = begun(room, [box(8, 70, 112, 40)], [140, 90]);
    expect(closed.beyond).toBeDefined();
    holdAgainst(closed);
  });
});
