import { type Point, unite } from '../geometry/index.ts';
import type { Job, SurfaceSpec } from '../job/Job.ts';
import type { Problem } from '../job/Problem.ts';
import { makePattern, makePlain } from '../pattern/index.ts';
import type { Room } from '../room/Room.ts';
import { beginLayout, type Over } from './beginLayout.ts';
import { borderJoints } from './border/borderJoints.ts';
import { chalkGround } from './chalk/chalkGround.ts';
import { coursesOn } from './chalk/coursesOn.ts';
import { firstTile } from './chalk/firstTile.ts';
import { makeChalk } from './chalk/makeChalk.ts';
import { sightOf } from './chalk/sightOf.ts';
import { faultsOf } from './faults/faultsOf.ts';
import { jointsVary } from './faults/jointsVary.ts';
import { offsetBound } from './faults/offsetBound.ts';
import { sightTooShort } from './faults/sightTooShort.ts';
import { frameRoom, type RoomInFrame } from './frame/frameRoom.ts';
import { type Ground, makeGround } from './frame/Ground.ts';
import { turnOf } from './frame/turnOf.ts';
import type { Chalk, ChalkLine, Layout, Piece } from './Layout.ts';
import { pulledApart } from './movement/pulledApart.ts';
import type { WideJoint } from './movement/WideJoint.ts';
import { namePieces, pieceOf } from './names/namePieces.ts';
import type { LaidPiece } from './pieces/LaidPiece.ts';
import { type Lattice, makeLattice } from './pieces/Lattice.ts';
import { laidPieces } from './pieces/laidPieces.ts';
import type { Laid } from './pieces/layTiles.ts';
import { refusals } from './refusals.ts';
import { type Apart, setApart } from './setApart.ts';
import type { MainRuns } from './start/Choice.ts';
import { makeTapers } from './taper/makeTapers.ts';

/**
 * A surface's pattern laid on its room: where it starts, every piece with its name, what stays without tile,
 * the chalk lines and what is wrong with the layout. All in the pattern's frame, in ticks.
 *
 * @param over What is asked of it beside the job: one of the `rivals` of a layout of this floor, to start there; and joints to lay
 * wide, which go to the nearest joints of the start. A floor with a border or an inlay has none.
 */
export function makeLayout(
  job: Pick<Job, 'tiles' | 'joint' | 'print'>,
  surface: SurfaceSpec,
  room: Room,
  over: Over = {},
): Layout | { readonly problems: readonly Problem[] } {
  const withJoint = (joint: number) => makePlain(surface.pattern, job.tiles, joint);
  const pattern = makePattern(surface.pattern, job.tiles, job.joint);
  // Colors change neither where a pattern starts nor where its lines lie.
  const plain = withJoint(job.joint);
  const refused = [
    ...sightTooShort(surface, room, job.print.system),
    ...refusals(job, surface, room, pattern),
  ];
  if (refused.length > 0) return { problems: refused };
  const turned = turnOf(room, surface.pattern);
  const frame = frameRoom(room, turned);
  const apart = setApart({ job, surface, room, frame }, plain);
  if ('problems' in apart) return apart;
  const ground = groundIn(apart, room, surface, job);
  const begun = beginLayout({ ground, surface, pattern, plain, withJoint }, over);
  if ('problems' in begun) return begun;
  const { start, rivals, runs, wide, laid } = begun;
  const { origin } = start.chosen;
  const chalk = makeChalk({
    ...chalkGround(job, surface, room, frame),
    pattern: plain,
    origin,
    wide,
    middle: middleOf(runs, wide),
  });
  const sight = sightOf(room, surface.pattern, chalk);
  const all = laidPieces(laid);
  if (all.length === 0) return { problems: [noPieces(surface)] };
  const named = namePieces(all, laid.lattice, chalk.crossing);
  const pieces = named.map((one) => pieceOf(one, laid.lattice, ground.faces));
  return {
    surface: surface.name,
    turn: turned.turn,
    frame,
    pattern,
    origin,
    ...(wide.length > 0 && { wide }),
    start,
    ...(rivals.length > 0 && { rivals }),
    pieces: [...pieces, ...apart.pieces],
    left: [...leftOf(laid, ground), ...apart.left],
    field: tiledField(frame, [...laid.border, ...apart.kept]),
    chalk: finished({ ...chalk, ...(sight && { sight }) }, makeLattice(plain, origin, wide), pieces),
    faults: [
      ...faultsOf(named, laid.left, ground, pattern.joint),
      ...offsetBound(plain, runs.along, ground),
      ...jointsVary(pattern),
      ...apart.faults,
      ...borderJoints(ground, named, pattern.joint),
    ],
    tapers: makeTapers(ground, plain, laid.border, surface),
    ...apartIn(apart, ground, laid),
  };
}

/** What the field's pattern lies on: the room, less its border and its inlays. */
function groundIn(
  apart: Apart,
  { openings }: Room,
  surface: SurfaceSpec,
  { print }: Pick<Job, 'print'>,
): Ground {
  const names = openings.map(({ name }) => name);
  return makeGround(apart.room, names, surface, print.step);
}

/** Chalk lines with what only the pieces tell: the first to set, and the courses a line lies on. */
function finished(chalk: Omit<Chalk, 'firstPiece'>, lattice: Lattice, pieces: readonly Piece[]): Chalk {
  const courses = coursesOn(chalk.crossing, lattice);
  const onCourses = (line: ChalkLine) => (line.axis === 'along' && courses ? { ...line, courses } : line);
  const further = chalk.further?.map(onCourses);
  const lines = chalk.lines.map(onCourses);
  return {
    ...chalk,
    lines,
    ...(further ? { further } : {}),
    ...firstTile(chalk.crossing, lattice.pattern, pieces, further),
  };
}

/** The middle of both runs, where it lies on the floor. */
function middleOf({ along, across }: MainRuns, wide: readonly WideJoint[]): Point {
  const half = ({ low, high }: MainRuns['along']) => Math.round((low + high) / 2);
  return [pulledApart(wide, 0, half(along)), pulledApart(wide, 1, half(across))];
}

function leftOf({ left }: Laid, { faces }: Ground): Layout['left'] {
  return left.map(({ shape, face, gap }) => ({ shape, why: 'gapOnly', edge: faces[face]!.id, gap }));
}

/** Border and inlays of a floor that has them, and what they leave of the field. */
function apartIn(
  { border, inlays, pieces }: Apart,
  { frame }: Ground,
  laid: Laid,
): Pick<Layout, 'border' | 'inlays' | 'inner'> {
  return {
    ...(border && { border }),
    ...(inlays.length > 0 && { inlays }),
    ...(pieces.length > 0 && { inner: tiledField(frame, laid.border) }),
  };
}

/** The field, and what tiles that stay whole cover of its gaps. */
function tiledField(
  frame: RoomInFrame,
  pieces: readonly Pick<LaidPiece, 'whole' | 'shape'>[],
): Layout['field'] {
  const kept = pieces.filter(({ whole }) => whole);
  return kept.length === 0 ? frame.field : unite([...frame.field, ...kept.map(({ shape }) => shape)]);
}

function noPieces({ name }: SurfaceSpec): Problem {
  return { code: 'noPieces', path: [name, 'pattern'], found: '0', figures: {} };
}
