import type { DoorwaySpec, SurfaceSpec } from '../../src/job/Job.ts';
import { surfaceOf, wallFacts } from './surfaceOf.ts';

const MM = 320;

/** A floor of corridors 1.1 m wide in millimetres: its corners, the wall with its only door, and how long each leg is that is no other's. */
export interface Corridors {
  readonly corners: readonly (readonly [x: number, y: number])[];
  readonly door: string;
  readonly legs: readonly number[];
}

const T = [[0, 0], [14000, 0], [14000, 1100], [7550, 1100], [7550, 6100], [6450, 6100], [6450, 1100], [0, 1100]] as const; // biome-ignore format: corners on a line
const L = [[0, 0], [14000, 0], [14000, 6100], [12900, 6100], [12900, 1100], [0, 1100]] as const; // biome-ignore format: corners on a line
const U = [[0, 0], [9000, 0], [9000, 6100], [7900, 6100], [7900, 1100], [1100, 1100], [1100, 7100], [0, 7100]] as const; // biome-ignore format: corners on a line

export const corridors: Readonly<Record<string, Corridors>> = {
  'T left by its long leg': { corners: T, door: 'H-A', legs: [14000, 5000] },
  'T left by its short leg': { corners: T, door: 'E-F', legs: [14000, 5000] },
  'L left by its long leg': { corners: L, door: 'F-A', legs: [12900, 5000] },
  'U left by its short leg': { corners: U, door: 'C-D', legs: [6800, 6000, 5000] },
};

/** Corridors as a floor to lay; `over` as the job might wish. */
export function corridorFloor({ corners, door }: Corridors, over: Partial<SurfaceSpec> = {}): SurfaceSpec {
  return surfaceOf(
    corners.map(([x, y]) => [x * MM, y * MM] as const),
    { facts: { gap: 6 * MM, gapMax: 12 * MM }, doorways: [doorIn(door)], over },
  );
}

/** A doorway of 900 mm, as far from both corners of a leg's end. */
function doorIn(wall: string): DoorwaySpec {
  const facts = wallFacts({ gap: 0, gapMax: 6 * MM });
  const side = { kind: 'plain', facts } as const;
  return {
    name: 'hall',
    wall,
    fromCorner: wall[0]!,
    from: 100 * MM,
    clear: 900 * MM,
    wallThickness: 120 * MM,
    doorLine: 60 * MM,
    left: side,
    right: side,
    beyond: 'wood',
    line: facts,
    onlyExit: true,
  };
}
