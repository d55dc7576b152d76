import type { Cuts } from '../cuts/Cut.ts';
import { shapeArea } from '../geometry/index.ts';
import type { Job, ZoneWish } from '../job/Job.ts';
import type { Layout, Piece } from '../layout/Layout.ts';
import { fieldAreaM2 } from '../materials/fieldRuns.ts';
import { areaM2Of } from '../measure/index.ts';
import { endPieces } from './endPieces.ts';
import { foundSpaces } from './foundSpaces.ts';
import { type Part, partsInOrder } from './partsInOrder.ts';
import { equalSeams, type Seams, wishedSeams } from './seamsOf.ts';
import { type WayOut, wayOutOf } from './wayOutOf.ts';
import type { Zone } from './Zone.ts';
import { zoneMortar } from './zoneMortar.ts';

/**
 * The parts of a field that are set in one go, in the order of work: as the job wishes, else so many that each is at most about
 * a working day. Each piece belongs to one zone; the last zone ends at the way out.
 */
export function makeZones(job: Job, layout: Layout, cuts: Cuts): Zone[] {
  const surface = job.surfaces.find(({ name }) => name === layout.surface);
  const wayOut = wayOutOf(job, surface, layout);
  const seams = seamsFor(job, layout, surface?.zones ?? { kind: 'auto' });
  return partsInOrder(layout, seams, wayOut).map((part, i) => zoneOf(job, layout, cuts, part, i + 1, wayOut));
}

function seamsFor(job: Job, layout: Layout, wish: ZoneWish): Seams {
  if (wish.kind === 'splits') return wishedSeams(layout, wish);
  return equalSeams(layout, wish.kind === 'count' ? wish.count : daysFor(job, fieldAreaM2(layout)));
}

function daysFor({ work }: Job, fieldM2: number): number {
  const hours = fieldM2 / work.paceM2PerHour;
  const day = (work.endMinute - work.startMinute) / 60;
  return Math.max(1, Math.ceil(hours / day - 1e-9));
}

function zoneOf(
  job: Job,
  layout: Layout,
  cuts: Cuts,
  { pieces, seam }: Part,
  number: number,
  wayOut: WayOut | undefined,
): Zone {
  const areaM2 = (fieldAreaM2(layout) * areaOf(pieces)) / areaOf(layout.pieces);
  const ids = new Set(pieces.map(({ id }) => id));
  return {
    number,
    pieces: [...ids],
    areaM2,
    hours: areaM2 / job.work.paceM2PerHour,
    ...(seam ? { seam } : {}),
    ...endPieces(layout, pieces, number, wayOut),
    ...(wayOut ? { wayOut: wayOut.name, onlyWayOut: wayOut.only } : {}),
    rows: cuts.rows.filter(({ terms }) => terms.some(({ id }) => ids.has(id))).map(({ id }) => id),
    ...zoneMortar(job, areaM2),
    found: foundSpaces(layout, cuts, ids),
  };
}

function areaOf(pieces: readonly Piece[]): number {
  return areaM2Of(pieces.reduce((sum, { shape }) => sum + shapeArea(shape), 0));
}
