import type { Cuts } from '../cuts/Cut.ts';
import { shapeArea } from '../geometry/index.ts';
import type { Job, ZoneWish } from '../job/Job.ts';
import type { Layout, Piece } from '../layout/Layout.ts';
import { fieldAreaM2 } from '../materials/fieldRuns.ts';
import { areaM2Of } from '../measure/index.ts';
import { backingOut } from './backingOut.ts';
import { behindFirst } from './behindFirst.ts';
import { doorwayLast } from './doorwayLast.ts';
import { endPieces } from './endPieces.ts';
import { foundSpaces } from './foundSpaces.ts';
import { openFloor } from './openFloor.ts';
import { type Part, partsInOrder } from './partsInOrder.ts';
import { equalSeams, type Seams, wishedSeams } from './seamsOf.ts';
import { shutOff } from './shutOff.ts';
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
  const parts = partsOf(job, layout, surface?.zones ?? { kind: 'auto' }, wayOut);
  const leaving = wayOut && { wayOut, floor: openFloor(layout, wayOut) };
  return parts.map((part, i) => {
    const zone = zoneOf(job, layout, cuts, part, i + 1, wayOut);
    const laid = parts.slice(0, i).flatMap(({ pieces }) => pieces);
    const { first, last } = zone;
    const begun = { laid, pieces: part.pieces, first, last };
    const beyond = leaving && (shutOff(layout, begun, leaving) ?? behindFirst(layout, begun, leaving));
    return beyond === undefined ? zone : { ...zone, beyond };
  });
}

/** Where the job leaves it open, in as few as are set within a day each, or a part more for each that takes in what only it reaches. */
function partsOf(job: Job, layout: Layout, wish: ZoneWish, wayOut: WayOut | undefined): readonly Part[] {
  const partedBy = (seams: Seams) => {
    const bands = partsInOrder(layout, seams, wayOut);
    return { bands, parts: doorwayLast(layout, backingOut(layout, bands, wayOut), wayOut) };
  };
  if (wish.kind === 'splits') return partedBy(wishedSeams(layout, wish)).parts;
  if (wish.kind === 'count') return partedBy(equalSeams(layout, wish.count)).parts;
  const days = daysFor(job, fieldAreaM2(layout));
  const tried = Array.from({ length: MORE_PARTS + 1 }, (_, more) => days + more);
  for (const count of tried) {
    const { bands, parts } = partedBy(equalSeams(layout, count));
    const fits = parts.every(({ pieces }) => daysFor(job, setAreaM2(layout, pieces)) === 1);
    if (parts === bands || fits) return parts;
  }
  return partedBy(equalSeams(layout, days)).parts;
}

/** By how many parts more a floor is parted before one of them is left longer than a day. */
const MORE_PARTS = 3;

function daysFor({ work }: Job, fieldM2: number): number {
  const hours = fieldM2 / work.paceM2PerHour;
  const day = (work.endMinute - work.startMinute) / 60;
  return Math.max(1, Math.ceil(hours / day - 1e-9));
}

/** The part of the field that some pieces take, joints and all, in square metres. */
function setAreaM2(layout: Layout, pieces: readonly Piece[]): number {
  return (fieldAreaM2(layout) * areaOf(pieces)) / areaOf(layout.pieces);
}

function zoneOf(
  job: Job,
  layout: Layout,
  cuts: Cuts,
  { pieces, seam }: Part,
  number: number,
  wayOut: WayOut | undefined,
): Zone {
  const areaM2 = setAreaM2(layout, pieces);
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
    found: foundSpaces(layout, cuts, ids, job.print.step),
  };
}

function areaOf(pieces: readonly Piece[]): number {
  return areaM2Of(pieces.reduce((sum, { shape }) => sum + shapeArea(shape), 0));
}
