import type { Point } from '../../geometry/index.ts';
import { makeField } from '../../room/makeField.ts';
import { type Ground, makeGround } from '../frame/Ground.ts';
import type { ReadyFloor } from '../readyFloor.ts';
import type { MainRuns } from '../start/Choice.ts';
import type { FacingRun } from '../start/findRuns.ts';
import type { Chips } from './Chips.ts';
import { chipGaps } from './chipGaps.ts';

/** A floor with its gaps as mosaic sheets leave them that are cut between chips. */
export interface ChippedFloor {
  readonly chips: Chips;
  readonly ground: Ground;
  readonly runs: MainRuns;
}

/**
 * The ground of a floor of mosaic sheets that lie in a straight pattern from a start, its gaps wider where that spares chips the saw.
 * Undefined on any other floor, and where a border or an inlay lies on it or joints are laid wider.
 */
export function cutBetweenChips(floor: ReadyFloor, origin: Point): ChippedFloor | undefined {
  const { job, surface, room, plain, ground, apart, chosen, wished } = floor;
  const { chips: count, chip } = job.tiles.find(({ key }) => key === plain.tiles[0]!.tile) ?? {};
  const isPlain = plain.straightX && plain.straightY && plain.inCourses;
  if (!count || !isPlain || apart.pieces.length > 0 || wished.length > 0) return undefined;
  const { frame } = ground;
  // Rows of round chips and of hexagons reach into each other, so that no straight line runs between them.
  const gaps = chip
    ? frame.edges.map(({ gap }) => gap)
    : chipGaps(frame.edges, { pattern: plain, count, origin });
  const edges = frame.edges.map((edge, i) => ({ ...edge, gap: gaps[i]! }));
  const field = makeField(frame.outline, edges, frame.obstacles);
  const names = room.openings.map(({ name }) => name);
  const laidOn = makeGround({ ...frame, edges, field }, names, surface, job.print.step);
  const wider = { ...laidOn, sheets: true };
  const between = edges.flatMap(({ id, gap }, i) => (gap > frame.edges[i]!.gap ? [{ edge: id, gap }] : []));
  return { chips: { count, between }, ground: wider, runs: runsOn(chosen.runs, ground, wider) };
}

/** The runs of a ground as they lie between its wider gaps. */
function runsOn({ along, across }: MainRuns, before: Ground, now: Ground): MainRuns {
  const more = (face: number) => (now.faces[face]?.gap ?? 0) - (before.faces[face]?.gap ?? 0);
  const moved = (run: FacingRun): FacingRun => {
    return { ...run, low: run.low + more(run.lowFace), high: run.high - more(run.highFace) };
  };
  return { along: moved(along), across: moved(across) };
}
