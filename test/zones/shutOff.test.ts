import { describe, expect, test } from 'vitest';
import { distancePointSegment, type Point } from '../../src/geometry/index.ts';
import { inch } from '../cuts/support/inches.ts';
import { demos } from '../sheets/demos.ts';
import { begunFloor, box, seen, turnedPlace } from './support/begunFloor.ts';
import { demoZones, type ToldZone } from './support/demoZones.ts';
import { judgeShutOff, type Measures } from './support/judgeShutOff.ts';

/** A grid of inches is off by one at each edge: what is shut off for a slim setter with long arms is, and for a stout one with short arms nothing is missed. */
const SURELY: Measures = { half: 4.5, reach: 24, by: 18 };
const PERHAPS: Measures = { half: 7, reach: 16, by: 23 };
/** The judge walks along the axes only, and to the near side of a piece. */
const NEARLY = 0.8;

function holdAgainst({ beyond, zone }: ToldZone): void {
  const surely = judgeShutOff(zone, SURELY);
  const perhaps = judgeShutOff(zone, PERHAPS);
  if (beyond === undefined) expect(surely.map(({ id }) => id)).toEqual([]);
  else {
    expect(perhaps.map(({ id }) => id)).toContain(beyond);
    const { walk } = perhaps.find(({ id }) => id === beyond)!;
    for (const one of surely) expect([one.id, walk]).toEqual([one.id, Math.max(walk, NEARLY * one.walk)]);
  }
}

describe('a part of a zone that its first piece shuts off', () => {
  // Where a flood finds none, what is told is that the zone goes on behind its first piece.
  test.each(demoZones)('is told as a flood of the floor finds it: $slug $number', ({ beyond, zone }) => {
    const isShut = judgeShutOff(zone, PERHAPS).length > 0;
    holdAgainst({ beyond: isShut ? beyond : undefined, zone });
  });

  test('is the end of the kitchen behind its island, whose far side is 52 and 27 in off A-B, and is told', () => {
    const kitchen = demoZones.find(({ slug, number }) => slug === 'quarry-kitchen' && number === 1)!;
    const surface = demos.find(({ slug }) => slug === 'quarry-kitchen')!.packet.surfaces[0]!;
    const { from, to } = surface.edges.find(({ id }) => id === 'A-B')!;
    const far = kitchen.zone.own.find(({ id }) => id === kitchen.beyond)!.ring;
    for (const point of far) expect(distancePointSegment(point, from, to)).toBeGreaterThan(inch(52 + 27));
  });
});

/** A room with its door below, and a room beyond it that is entered through a corridor of 36 in. */
const TWO_ROOMS: readonly Point[] = [
  [70, 0], [106, 0], [176, 0], [176, 80], [106, 80], [106, 110], [176, 110], [176, 190], [0, 190], [0, 110], [70, 110], [70, 80], [0, 80], [0, 0],
]; // biome-ignore format: corners on a line

const ways = [0, 1, 2, 3].flatMap((quarters) =>
  [false, true].map((mirrored) => [quarters, mirrored] as const),
);

/** What the first piece of a floor shuts off, without what only lies behind it. */
function begunShut(...floor: Parameters<typeof begunFloor>) {
  const { shut: beyond, zone } = begunFloor(...floor);
  return { beyond, zone };
}

describe('where the first piece lies', () => {
  test.each(ways)(
    'in the mouth of a corridor the room beyond is set first, %d quarters on, mirrored: %s',
    (quarters, mirrored) => {
      const corners = seen(TWO_ROOMS, quarters, mirrored);
      const told = begunShut(corners, [], turnedPlace([88, 92], quarters, mirrored));
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
    const { beyond, zone } = begunShut(corners, [], [69, 0.25]);
    const far = zone.own.find(({ id }) => id === beyond);
    expect(zone.first).toBe(zone.last);
    expect(Math.min(...far!.ring.map(([, y]) => y))).toBeGreaterThan(inch(130));
  });

  test('in the middle of a wide room nothing is shut off', () => {
    const told = begunShut(box(0, 0, 144, 144), [], [72, 72]);
    expect(told.beyond).toBeUndefined();
    holdAgainst(told);
  });

  test('before an island that one can pass on its other side nothing is shut off, and where one cannot all behind it is', () => {
    const room: readonly Point[] = [[20, 0], [56, 0], [160, 0], [160, 200], [0, 200], [0, 0]]; // biome-ignore format: corners on a line
    const open = begunShut(room, [box(50, 70, 70, 40)], [140, 90]);
    expect(open.beyond).toBeUndefined();
    holdAgainst(open);
    const closed = begunShut(room, [box(8, 70, 112, 40)], [140, 90]);
    expect(closed.beyond).toBeDefined();
    holdAgainst(closed);
  });
});
