import type { Ring } from '../../src/geometry/index.ts';
import type { EdgeFacts, Job, SurfaceSpec, TileSpec } from '../../src/job/Job.ts';
import type { Layout } from '../../src/layout/Layout.ts';
import type { Ticks } from '../../src/measure/index.ts';
import type { RoomEdge } from '../../src/room/Room.ts';
import { inches } from '../../src/trade/index.ts';
import { flatBreakage } from '../support/flatBreakage.ts';

export const SQ_FT_IN_M2 = 0.09290304; // NIST Handbook 44, Appendix C
export const LB_IN_KG = 0.45359237; // NIST Handbook 44, Appendix C

const WALL: EdgeFacts = {
  meets: 'wall',
  gap: inches(1 / 4),
  gapMax: inches(1 / 2),
  touch: true,
  seen: 'plain',
};

export const TILE: TileSpec = {
  key: 'field',
  name: 'grey, matt',
  readings: [],
  length: inches(12),
  width: inches(12),
  spread: 0,
  thickness: inches(3 / 8),
  edge: 'rectified',
  bow: 0,
  turns: 'any',
  material: 'porcelain',
  glazed: true,
  onHand: 0,
};

export const FLOOR: SurfaceSpec = {
  name: 'floor',
  kind: 'floor',
  corners: [],
  walls: [],
  diagonals: [],
  precision: { kind: 'stated', sd: 1016 },
  cornerChecks: [],
  baseLine: [],
  setAside: [],
  doorways: [],
  obstacles: [],
  exposure: 'dry',
  pattern: { name: 'straight', tile: 'field', turnedDeg: 0, along: 'A-B' },
  start: { along: { kind: 'best' }, across: { kind: 'best' } },
  zones: { kind: 'auto' },
  minWeb: inches(1 / 2),
  minStrip: inches(1),
  minShare: 0.5,
};

/** A plain job with every default; a test changes what it is about. */
export const JOB: Job = {
  slug: 'plain',
  title: 'Plain room',
  owner: 'A. Owner',
  place: '1 Any Street',
  status: 'planned',
  revision: { letter: 'A', date: '2026-11-01' },
  print: { paper: 'letter', system: 'inches', step: 508, crew: ['en'], owner: 'en' },
  work: {
    from: '2026-11-30',
    days: [1, 2, 3, 4, 5],
    daysOff: [],
    startMinute: 480,
    endMinute: 990,
    paceM2PerHour: 1,
    tempC: 21,
  },
  houseYear: 1999,
  tiles: [TILE],
  joint: inches(1 / 8),
  surfaces: [FLOOR],
  base: {
    below: 'boards',
    removed: [],
    kept: [],
    fresh: [],
    heights: [],
    flatness: [],
    cracks: [],
    joints: [],
    heated: false,
    comesOut: [],
  },
  products: {
    mortar: {
      notch: { kind: 'square', width: inches(1 / 4), depth: inches(3 / 8), space: inches(1 / 4) },
      bagKg: 50 * LB_IN_KG,
      backButter: false,
      potLifeHours: 1.5,
      groutAfterHours: 24,
      stated: [],
    },
    grout: {
      kind: 'cement',
      bagKg: 25 * LB_IN_KG,
      kgPerLitre: 1.6,
      walkHours: 24,
      heavyHours: 72,
      waterHours: 168,
      sealAfterHours: [96, 144],
      groutingHours: 3,
      stated: [],
    },
    sealer: { kind: 'penetrating', coversM2PerLitre: 10, bottleLitres: 1, cureHours: 24, stated: [] },
    sealant: { tubeLitres: 0.3 },
  },
  saw: { kerf: 640 },
  offcuts: { plan: 'fewestTiles', narrowest: 0 },
  waste: { breakage: flatBreakage(0.03), keep: 0.02 },
  access: { onlyToilet: false, onlyExit: false },
  contacts: {},
  defaults: [],
};

export function withTile(change: Partial<TileSpec>, job: Job = JOB): Job {
  return { ...job, tiles: [{ ...TILE, ...change }] };
}

export function withFloor(change: Partial<SurfaceSpec>, job: Job = JOB): Job {
  return { ...job, surfaces: [{ ...FLOOR, ...change }] };
}

/** The layout of a rectangular field, as far as materials and limits look at it. `turn` in radians. */
export function fieldLayout(width: Ticks, height: Ticks, joint: Ticks, gap: Ticks = WALL.gap): Layout {
  const outer: Ring = [
    [0, 0],
    [width, 0],
    [width, height],
    [0, height],
  ];
  const out = (value: number, full: number) => (value === 0 ? -gap : full + gap);
  const outline: Ring = outer.map(([x, y]) => [out(x, width), out(y, height)]);
  const edges: RoomEdge[] = outline.map((from, at) => ({
    ...WALL,
    gap,
    id: `${'ABCD'[at]}-${'BCDA'[at]}`,
    name: `${'ABCD'[at]}-${'BCDA'[at]}`,
    from,
    to: outline[(at + 1) % 4]!,
  }));
  const field = [{ outer, holes: [] }];
  const frame = { outline, edges, obstacles: [], field };
  const pattern = { joint, inCourses: true, tiles: [{ tile: 'field' }] };
  return { surface: 'floor', turn: 0, frame, field, left: [], pattern } as unknown as Layout;
}

/** A square field of so many square feet. */
export function squareFeet(area: number, joint: Ticks = JOB.joint): Layout {
  const side = Math.sqrt(area) * inches(12);
  return fieldLayout(side, side, joint);
}
