import type { Job, SurfaceSpec, TileSpec } from '../../../src/job/Job.ts';
import { inch, mm, SIXTEENTH } from './inches.ts';

export const testTile: TileSpec = {
  key: 'field',
  name: 'grey square',
  readings: [],
  length: inch(11 + 13 / 16),
  width: inch(11 + 13 / 16),
  spread: 0,
  thickness: inch(3 / 8),
  edge: 'rectified',
  bow: 0,
  turns: 'any',
  material: 'porcelain',
  glazed: true,
  onHand: 0,
};

const surface: SurfaceSpec = {
  name: 'floor',
  kind: 'floor',
  corners: [],
  walls: [],
  diagonals: [],
  doorways: [],
  obstacles: [],
  exposure: 'dry',
  pattern: { name: 'straight', tile: 'field', turnedDeg: 0, along: 'A-B' },
  start: { along: { kind: 'best' }, across: { kind: 'best' } },
  zones: { kind: 'auto' },
  minWeb: inch(0.5),
  minStrip: inch(1),
  minShare: 0.5,
};

/** A job with all that these stages read; what a test is about is given on top. */
export function testJob(
  given: Partial<Job> = {},
  tile: Partial<TileSpec> = {},
  floor: Partial<SurfaceSpec> = {},
): Job {
  return {
    slug: 'test',
    title: 'Test floor',
    owner: '',
    place: '',
    status: 'planned',
    revision: { letter: 'A', date: '2027-03-01' },
    print: { paper: 'letter', system: 'inches', step: SIXTEENTH, crew: ['en'], owner: 'en' },
    work: {
      from: '2027-03-08',
      days: [1, 2, 3, 4, 5],
      startMinute: 480,
      endMinute: 960,
      paceM2PerHour: 1,
      tempC: 21,
    },
    tiles: [{ ...testTile, ...tile }],
    joint: inch(3 / 16),
    surfaces: [{ ...surface, ...floor }],
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
        notch: { kind: 'square', width: inch(0.25), depth: inch(0.375), space: inch(0.25) },
        bagKg: 22.6796185,
        backButter: false,
        potLifeHours: 1.5,
        groutAfterHours: 24,
        stated: [],
      },
      grout: {
        kind: 'cement',
        bagKg: 4.5,
        kgPerLitre: 1.6,
        walkHours: 24,
        heavyHours: 72,
        waterHours: 168,
        sealAfterHours: [96, 144],
        groutingHours: 3,
        stated: [],
      },
      sealer: { kind: 'none', coversM2PerLitre: 10, cureHours: 24, stated: [] },
      sealant: { tubeLitres: 0.3 },
    },
    saw: { kerf: mm(2) },
    waste: { breakage: 0.03, keep: 0.02 },
    access: { onlyToilet: false, onlyExit: false },
    contacts: {},
    defaults: [],
    ...given,
  };
}
