import { makeCalendar } from '../calendar/makeCalendar.ts';
import { makeCare } from '../care/makeCare.ts';
import { makeCuts } from '../cuts/makeCuts.ts';
import type { Job, SurfaceSpec } from '../job/Job.ts';
import type { Problem } from '../job/Problem.ts';
import { carriedJoints } from '../layout/carriedJoints.ts';
import type { Candidate, Layout } from '../layout/Layout.ts';
import { layFloor } from '../layout/layFloor.ts';
import { readyFloor, type Wishes } from '../layout/readyFloor.ts';
import { baseChecks } from '../materials/baseChecks.ts';
import { carriedRuns } from '../materials/carriedRuns.ts';
import { makeHeights } from '../materials/makeHeights.ts';
import { makeLimits } from '../materials/makeLimits.ts';
import { makeMaterials } from '../materials/makeMaterials.ts';
import { makeRoom } from '../room/makeRoom.ts';
import { placeBase } from '../room/placeBase.ts';
import type { Room } from '../room/Room.ts';
import { makeTilePlans } from '../tiles/makeTilePlans.ts';
import { makeZones } from '../zones/makeZones.ts';
import { assumedDefaults } from './assumedDefaults.ts';
import { easedJob } from './easedJob.ts';
import { fewerTiles } from './fewerTiles.ts';
import { makeChoices } from './makeChoices.ts';
import { makeCurve } from './makeCurve.ts';
import { makeNotes } from './makeNotes.ts';
import { makeSurface, type Stages } from './makeSurface.ts';
import type { CurvePoint, Packet } from './Packet.ts';
import { stampOf } from './stampOf.ts';
import { turnedBase } from './turnedBase.ts';
import { withMovement } from './withMovement.ts';

/** What is asked of a packet beside what every packet has: the curve of cuts against tiles takes up to a second. */
export interface PacketWishes {
  readonly curve?: boolean;
}

/**
 * One measured job becomes one packet: the table of contents of the program.
 *
 * All lengths in ticks. Total: a job that cannot be laid gives its problems instead of a packet, all of them at once.
 */
export function makePacket(
  given: Job,
  { curve = false }: PacketWishes = {},
): { packet: Packet } | { problems: readonly Problem[] } {
  const rooms = given.surfaces.map((surface) => ({ surface, made: makeRoom(surface, given.print.system) }));
  const placed = rooms.flatMap(({ surface, made }) =>
    'problems' in made ? [] : [{ surface, room: made.room }],
  );
  const problems = rooms.flatMap(({ made }) => ('problems' in made ? made.problems : []));
  const { job, reason } = easedJob(given, placed);
  const stages = placed.flatMap(({ surface, room }): Stages[] => {
    const placing = placeBase(job.base, surface, room, job.print.system);
    problems.push(...placing.problems);
    const layout = fewestOf(job, surface, room);
    if ('problems' in layout) {
      problems.push(...layout.problems);
      return [];
    }
    const jointed = withMovement(job, surface, placing.base, layout, (wishes) => {
      const laid = fewestOf(job, surface, room, wishes);
      return 'problems' in laid ? undefined : laid;
    });
    const reasoned = reason ? withReason(jointed, reason) : jointed;
    const cuts = makeCuts(job, reasoned);
    return [
      { surface, room, base: placing.base, layout: reasoned, cuts, zones: makeZones(job, reasoned, cuts) },
    ];
  });
  return problems.length > 0 ? { problems } : { packet: assemble(job, stages, curve) };
}

/** The layout of a floor; of starts that are nearly as good as the best, the one that takes fewest tiles. */
function fewestOf(
  job: Job,
  surface: SurfaceSpec,
  room: Room,
  wishes: Wishes = {},
): ReturnType<typeof layFloor> {
  const floor = readyFloor(job, surface, room, wishes);
  if ('problems' in floor) return floor;
  const layout = layFloor(floor);
  if ('problems' in layout) return layout;
  const rival = fewerTiles(job, surface, room, layout);
  return rival ? layFloor(floor, rival) : layout;
}

function withReason(layout: Layout, reason: Candidate['reason'][number]): Layout {
  const { start } = layout;
  const chosen = { ...start.chosen, reason: [...start.chosen.reason, reason] };
  return { ...layout, start: { ...start, chosen } };
}

function assemble(job: Job, stages: readonly Stages[], curve: boolean): Packet {
  const layouts = stages.map((stage) => stage.layout);
  const tiles = makeTilePlans(
    job,
    layouts,
    stages.map((stage) => stage.cuts),
    stages.map((stage) => stage.zones.flatMap(({ pieces }) => pieces)),
  );
  const calendar = makeCalendar(job, stages.flatMap(zonesOnTheClock));
  const limits = makeLimits(job, layouts);
  const heights = makeHeights(job);
  const checks = baseChecks(job.base);
  const curves = stages.map((stage) => (curve ? makeCurve(job, stage) : []));
  const choices = makeChoices(job, stages, curves);
  return {
    format: 'tile-job-packet/1',
    job: {
      slug: job.slug,
      title: job.title,
      owner: job.owner,
      place: job.place,
      status: job.status,
      revision: job.revision.letter,
      date: job.revision.date,
      stamp: stampOf(JSON.stringify(job)),
    },
    ticksPerMm: 320,
    rounding: { step: job.print.step },
    kerf: job.saw.kerf,
    spec: job,
    surfaces: stages.map((stage, i) => ({
      ...makeSurface(job, stage),
      ...curveOf(curves[i]!),
      ...(choices[i] && { choice: choices[i] }),
    })),
    tiles,
    layers: job.base.fresh,
    base: job.base,
    baseChecks: checks,
    heights,
    limits,
    materials: makeMaterials(job, layouts, tiles, stages.flatMap(runsOverBase)),
    calendar,
    care: makeCare(job, calendar),
    notes: makeNotes(stages, limits, heights, checks),
    defaults: assumedDefaults(job, stages),
  };
}

/** A floor's zones as the calendar has them: where there are several floors, each with the name of its own. */
function zonesOnTheClock({ surface, zones }: Stages, _: number, stages: readonly Stages[]) {
  return stages.length > 1 ? zones.map((zone) => ({ ...zone, floor: surface.name })) : zones;
}

/** What of a floor runs over joints and moving cracks of its base. */
function runsOverBase({ layout, base }: Stages) {
  const turned = turnedBase(base, layout.turn);
  return carriedRuns(layout, turned, carriedJoints(layout, turned));
}

/** A curve of one start tells nothing. */
function curveOf(curve: readonly CurvePoint[]): { curve?: readonly CurvePoint[] } {
  return curve.length > 1 ? { curve } : {};
}
