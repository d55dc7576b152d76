import { describe, expect, test } from 'vitest';
import type { Point } from '../../src/geometry/index.ts';
import { inch } from '../cuts/support/inches.ts';
import { begunFloor, box, seen, turnedPlace } from './support/begunFloor.ts';
import { demoZones, type ToldZone } from './support/demoZones.ts';
import { judgeBehind } from './support/judgeBehind.ts';
import { judgeShutOff, judgeWalks, type Measures } from './support/judgeShutOff.ts';

const SETTER: Measures = { half: 6, reach: 20, by: 20 };
const STOUT: Measures = { half: 7, reach: 16, by: 23 };
const SURELY = { by: 20.1, degrees: 44.9 };
const PERHAPS = { by: 19.9, degrees: 45.1 };
/** The judge walks along the axes only, and to the near side of a piece. */
const NEARLY = 0.8;

function holdAgainst({ beyond, zone }: ToldZone): void {
  if (beyond === undefined) expect(judgeBehind(zone, SURELY)).toEqual([]);
  else {
    if (judgeShutOff(zone, STOUT).length > 0) return;
    expect(judgeBehind(zone, PERHAPS)).not.toEqual([]);
    const walks = judgeWalks(zone, SETTER);
    expect(walks.get(beyond)).toBeGreaterThanOrEqual(NEARLY * Math.max(...walks.values()));
  }
}

describe('a zone that goes on behind its first piece', () => {
  test.each(demoZones)('is told, from where one has farthest to walk: $slug $number', holdAgainst);
});

// 219 by 64 in, with a door of 34 in at one end; beside the first piece a person can still pass.
test('a hall is set from its far end, though its first piece can be passed', () => {
  const told = begunFloor(
    [
      [7, 0],
      [41, 0],
      [64, 0],
      [64, 219],
      [0, 219],
      [0, 0],
    ],
    [],
    [10, 102],
  );
  expect(told.shut).toBeUndefined();
  const far = told.zone.own.find(({ id }) => id === told.beyond)!;
  expect(Math.min(...far.ring.map(([, y]) => y))).toBeGreaterThan(inch(200));
  holdAgainst(told);
});

/** A room of 144 by 200 in with a door of 36 in below, in the middle of that wall. */
const ROOM: readonly Point[] = [[54, 0], [90, 0], [144, 0], [144, 200], [0, 200], [0, 0]]; // biome-ignore format: corners on a line
const ways = [0, 1, 2, 3].flatMap((quarters) =>
  [false, true].map((mirrored) => [quarters, mirrored] as const),
);

describe.each(ways)('in a wide room, %d quarters on, mirrored: %s', (quarters, mirrored) => {
  const begunAt = (place: Point, boxes: readonly (readonly Point[])[] = []) =>
    begunFloor(
      seen(ROOM, quarters, mirrored),
      boxes.map((ring) => ring.map((point) => turnedPlace(point, quarters, mirrored))),
      turnedPlace(place, quarters, mirrored),
    );

  test('a first piece in its middle is lined up on, and set after what lies behind it', () => {
    const told = begunAt([72, 100]);
    expect(told.shut).toBeUndefined();
    expect(told.beyond).toBeDefined();
    holdAgainst(told);
  });

  test('a first piece from beside which all behind it is laid is set first', () => {
    const told = begunAt([72, 186]);
    expect(told.beyond).toBeUndefined();
    holdAgainst(told);
  });

  test('what an island hides is come to on another way', () => {
    const told = begunAt([72, 100], [box(30, 116, 84, 84)]);
    expect(told.beyond).toBeUndefined();
    holdAgainst(told);
  });
});
