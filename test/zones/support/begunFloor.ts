import { makeCuts } from '../../../src/cuts/makeCuts.ts';
import type { Point, Ring } from '../../../src/geometry/index.ts';
import { makeZones } from '../../../src/zones/makeZones.ts';
import { openFloor } from '../../../src/zones/openFloor.ts';
import { shutOff } from '../../../src/zones/shutOff.ts';
import { wayOutOf } from '../../../src/zones/wayOutOf.ts';
import { inch } from '../../cuts/support/inches.ts';
import { type Floor, layFloor } from '../../cuts/support/layFloor.ts';
import { testJob } from '../../cuts/support/testJob.ts';
import type { ZoneToBegin } from './judgeShutOff.ts';

export const box = (x: number, y: number, w: number, h: number): Point[] => [[x, y], [x + w, y], [x + w, y + h], [x, y + h]]; // biome-ignore format: a box on a line
const scaled = (points: readonly Point[]): Ring => points.map(([x, y]) => [inch(x), inch(y)] as const);

/** A place in a room of 240 in as that is turned by quarters, and mirrored first or not. */
export function turnedPlace([x, y]: Point, quarters: number, mirrored: boolean): Point {
  let [a, b] = [mirrored ? 240 - x : x, y];
  for (let i = 0; i < quarters; i++) [a, b] = [240 - b, a];
  return [a, b];
}

/** A room turned by quarters, and mirrored first or not; the door stays the first side, the room on the left of its walls. */
export function seen(corners: readonly Point[], quarters: number, mirrored: boolean): readonly Point[] {
  const [one, two, ...rest] = corners.map((corner) => turnedPlace(corner, quarters, mirrored));
  return mirrored ? [two!, one!, ...rest.reverse()] : [one!, two!, ...rest];
}

/** A floor of one zone as its zone sheet tells it, and as far as its first piece shuts it off. */
export interface BegunFloor {
  readonly beyond: string | undefined;
  readonly shut: string | undefined;
  readonly zone: ZoneToBegin & { readonly last: string };
}

/** A floor of one zone whose chalk lines cross at a place in inches; its door is the first side. */
export function begunFloor(
  corners: readonly Point[],
  boxes: readonly (readonly Point[])[],
  [x, y]: Point,
): BegunFloor {
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
  const { first, last } = zone!;
  const wayOut = wayOutOf(job, job.surfaces[0], layout)!;
  const own = layout.pieces.map(({ id, shape }) => ({ id, ring: shape.outer }));
  return {
    beyond: zone!.beyond,
    shut: shutOff(
      layout,
      { laid: [], pieces: layout.pieces, first, last },
      { wayOut, floor: openFloor(layout, wayOut) },
    ),
    zone: {
      outline: floor.outline,
      solids: (floor.boxes ?? []).map(({ ring }) => ring),
      door: [floor.outline[0]!, floor.outline[1]!],
      laid: [],
      own,
      first,
      last,
    },
  };
}
