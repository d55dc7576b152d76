import { describe, expect, test } from 'vitest';
import type { DoorwaySpec, ObstacleSpec, SurfaceSpec } from '../../../src/job/Job.ts';
import type { Layout } from '../../../src/layout/Layout.ts';
import { layOut } from '../../support/layOut.ts';
import { jobOf, rectangle, surfaceOf, ticks, wallFacts } from '../../support/surfaceOf.ts';
import { mirrored, renumbered } from '../../support/transformSurface.ts';

const doorway: DoorwaySpec = {
  name: 'hall',
  wall: 'A-B',
  fromCorner: 'A',
  from: ticks('45 in'),
  clear: ticks('30 in'),
  wallThickness: ticks('4 in'),
  doorLine: ticks('2 in'),
  left: { kind: 'plain', facts: wallFacts({ meets: 'jamb' }) },
  right: { kind: 'plain', facts: wallFacts({ meets: 'jamb' }) },
  beyond: 'wood',
  line: wallFacts({ meets: 'doorway', gap: 1524, gapMax: 2032, touch: false }),
  onlyExit: true,
};

const flangeInCorner: ObstacleSpec = {
  ...wallFacts({ gapMax: 2032 }),
  name: 'flange',
  meets: 'flange',
  shape: {
    kind: 'circle',
    diameter: ticks('8 in'),
    from: [
      { wall: 'B-C', distance: ticks('5 in') },
      { wall: 'C-D', distance: ticks('2 in') },
    ],
  },
};

const island: ObstacleSpec = {
  ...wallFacts({ gapMax: 2032 }),
  name: 'island',
  meets: 'cabinet',
  shape: {
    kind: 'rectangle',
    along: ticks('40 in'),
    out: ticks('24 in'),
    from: [
      { wall: 'A-B', distance: ticks('36 in') },
      { wall: 'D-A', distance: ticks('50 in') },
    ],
  },
};

const hearth: ObstacleSpec = {
  ...wallFacts({ gapMax: 2032 }),
  name: 'hearth',
  meets: 'column',
  shape: {
    kind: 'rectangle',
    along: 108712,
    out: 76098,
    from: [
      { wall: 'A-B', distance: 0 },
      { wall: 'H-A', distance: 230124 },
    ],
  },
};

const leaning = [
  [0, 0],
  [ticks('120 in'), 0],
  [ticks('122 in'), ticks('98 in')],
  [-8128, ticks('101 in')],
] as const;

const tee = [
  [0, 0],
  [921004, 0],
  [921004, 302260],
  [738124, 302260],
  [738124, 520192],
  [128016, 520192],
  [128016, 302260],
  [0, 302260],
] as const;

/** A twentieth of a millimetre out of square: the two ends of a wall differ by more ticks than rounding makes. */
const nearlySquare = [
  [0, 0],
  [ticks('120 in'), 0],
  [ticks('120 in'), ticks('98 in') + 16],
  [0, ticks('98 in')],
] as const;

/** Walls of which one is bent out of the room, by a share of its length. */
function bent(surface: SurfaceSpec, shares: Readonly<Record<string, number>>): SurfaceSpec {
  const walls = surface.walls.map((wall) => {
    const rise = Math.round((shares[wall.id] ?? 0) * wall.readings[0]!);
    return rise === 0 ? wall : { ...wall, rise };
  });
  return { ...surface, walls };
}

/** Walls of which none is in sight. */
const unseen = (surface: SurfaceSpec): SurfaceSpec => ({
  ...surface,
  walls: surface.walls.map((wall) => ({ ...wall, seen: 'hidden' })),
});

const best = { kind: 'best' } as const;
const rooms: readonly (readonly [string, SurfaceSpec])[] = [
  [
    'a slanted pattern that begins at a wall which a doorway splits',
    surfaceOf(tee, {
      doorways: [{ ...doorway, from: 70104, clear: 273812 }],
      obstacles: [hearth],
      pattern: { name: 'running', offset: { numerator: 1, denominator: 3 }, turnedDeg: -22.5 },
      start: { along: { kind: 'tile', on: 'A-B' }, across: best },
    }),
  ],
  [
    'two curved walls that look at no other across a slanted pattern',
    bent(
      surfaceOf(rectangle(1217168, 983996), {
        pattern: { along: 'B-C', turnedDeg: -22.5 },
        start: { along: { kind: 'joint', on: 'B-C' }, across: best },
      }),
      { 'B-C': 0.142, 'C-D': 0.154 },
    ),
  ],
  [
    'a doorway that splits a wall of a room nearly square',
    surfaceOf(nearlySquare, { doorways: [doorway], pattern: { along: 'C-D' } }),
  ],
  [
    'a flange that cuts the end off a leaning wall',
    surfaceOf(leaning, { obstacles: [flangeInCorner], pattern: { turnedDeg: 45 } }),
  ],
  [
    'a whole tile at an island that has two sides',
    surfaceOf(leaning, {
      obstacles: [island],
      start: { along: best, across: { kind: 'tile', on: 'island' } },
    }),
  ],
  [
    'a slanted pattern of which only a doorway is in sight',
    unseen(surfaceOf(leaning, { doorways: [doorway], pattern: { turnedDeg: 30 } })),
  ],
  [
    'a half bond centred between two walls',
    surfaceOf(nearlySquare, {
      pattern: { name: 'running', offset: { numerator: 1, denominator: 2 } },
      start: { along: { kind: 'centred', between: ['D-A', 'B-C'] }, across: best },
    }),
  ],
];

const job = jobOf(ticks('12 in'), ticks('6 in'), ticks('1/8 in'));

/** What a start is chosen by; ends without their order. */
function figuresOf({ start: { chosen, along, across } }: Layout) {
  const { pieces, smallestShare, shift, ends } = chosen;
  const cuts = [ends.along, ends.across].flatMap((pair) => [...pair].sort((a, b) => a - b));
  return [
    pieces,
    Math.round(smallestShare * 20_000),
    shift,
    along.run?.length ?? 0,
    across.run?.length ?? 0,
    ...cuts,
  ];
}

describe.each(rooms)('%s', (_, surface) => {
  const own = figuresOf(layOut(job, surface).layout);
  const others = [1, 2, 3].map((first) => renumbered(surface, first));

  test.each([
    ...others.map((other, i) => [`numbered from corner ${i + 2}`, other] as const),
    ['mirrored and walked the other way', mirrored(surface, ticks('12 1/8 in'))] as const,
  ])('starts the same %s', (__, other) => {
    const found = figuresOf(layOut(job, other).layout);
    // Corners of a turned room are rounded to a tick: no figure may differ by more than a few.
    expect(found.map((figure, i) => Math.abs(figure - own[i]!) > 4)).toEqual(own.map(() => false));
  });
});
