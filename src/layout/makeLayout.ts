import { type Point, shapeArea, unite } from '../geometry/index.ts';
import type { Job, SurfaceSpec } from '../job/Job.ts';
import type { Problem } from '../job/Problem.ts';
import { makePattern, makePlain, type Pattern, patternProblems } from '../pattern/index.ts';
import type { Room } from '../room/Room.ts';
import { borderJoints } from './border/borderJoints.ts';
import { flushStart } from './border/flushStart.ts';
import { chalkGround } from './chalk/chalkGround.ts';
import { coursesOn } from './chalk/coursesOn.ts';
import { firstTile } from './chalk/firstTile.ts';
import { makeChalk } from './chalk/makeChalk.ts';
import { faultsOf } from './faults/faultsOf.ts';
import { jointsVary } from './faults/jointsVary.ts';
import { offsetBound } from './faults/offsetBound.ts';
import { drawnGround } from './frame/drawnGround.ts';
import { frameRoom, type RoomInFrame } from './frame/frameRoom.ts';
import { type Ground, makeGround } from './frame/Ground.ts';
import { turnOf } from './frame/turnOf.ts';
import type { Chalk, ChalkLine, Layout, Piece, Rival, Start } from './Layout.ts';
import { onJoints } from './movement/onJoints.ts';
import { pulledApart } from './movement/pulledApart.ts';
import type { WideJoint } from './movement/WideJoint.ts';
import { namePieces, pieceOf } from './names/namePieces.ts';
import type { LaidPiece } from './pieces/LaidPiece.ts';
import { type Lattice, makeLattice } from './pieces/Lattice.ts';
import { laidPieces } from './pieces/laidPieces.ts';
import { type Laid, layTiles } from './pieces/layTiles.ts';
import { type Apart, setApart } from './setApart.ts';
import type { MainRuns } from './start/Choice.ts';
import { chooseStart } from './start/chooseStart.ts';
import { evaluate } from './start/evaluate.ts';
import { makeTapers } from './taper/makeTapers.ts';

/** More pieces than this are refused: nobody cuts them from a list. */
export const MOST_PIECES = 100_000;

/** What is asked of a layout beside what the job says. */
export interface Over {
  readonly instead?: Rival;
  readonly wide?: readonly WideJoint[];
}

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
  { instead, wide: wished = [] }: Over = {},
): Layout | { readonly problems: readonly Problem[] } {
  const withJoint = (joint: number) => makePlain(surface.pattern, job.tiles, joint);
  const pattern = makePattern(surface.pattern, job.tiles, job.joint);
  // Colors change neither where a pattern starts nor where its lines lie.
  const plain = withJoint(job.joint);
  const refused = refusals(job, surface, room, pattern);
  if (refused.length > 0) return { problems: refused };
  const turned = turnOf(room, surface.pattern);
  const frame = frameRoom(room, turned);
  const apart = setApart({ job, surface, room, frame }, plain);
  if ('problems' in apart) return apart;
  const ground = groundIn(apart, room, surface, job);
  const drawn = drawnGround(ground, wished);
  const chosen = chooseStart({ ground: drawn, pattern: plain, surface, withJoint });
  if ('unknown' in chosen) return { problems: [unknownEdge(surface, chosen.axis, chosen.unknown, drawn)] };
  const { runs } = chosen;
  const start = flushStart(withRival(chosen.start, instead), runs, drawn, plain, surface.start);
  const { origin } = start.chosen;
  const wide = onJoints(wished, plain, origin);
  const laid = layTiles(ground, pattern, origin, wide);
  const chalk = makeChalk({
    ...chalkGround(job, surface, room, frame),
    pattern: plain,
    origin,
    wide,
    middle: middleOf(runs, wide),
  });
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
    start: recounted(start, drawn, plain, runs, laid),
    ...(chosen.rivals.length > 0 && { rivals: chosen.rivals }),
    pieces: [...pieces, ...apart.pieces],
    left: [...leftOf(laid, ground), ...apart.left],
    field: tiledField(frame, [...laid.border, ...apart.kept]),
    chalk: finished(chalk, makeLattice(plain, origin, wide), pieces),
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

/** A start with another in its place; the one that was the best before is then the second. */
function withRival(start: Start, instead: Rival | undefined): Start {
  return instead ? { ...start, ...instead, runnerUp: start.chosen } : start;
}

/** A start with the counts of the tiles as they lie, where it was chosen on a ground drawn together. */
function recounted(start: Start, drawn: Ground, pattern: Pattern, runs: MainRuns, laid: Laid): Start {
  if (laid.lattice.wide.length === 0) return start;
  const { along, across, chosen } = start;
  const { origin, shift, reason } = chosen;
  const counts = evaluate(drawn, pattern, { origin, along, across, shift }, runs, laid);
  return { ...start, chosen: { ...chosen, ...counts, reason } };
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

/** Why a pattern is not laid at all. */
function refusals(
  { tiles, print }: Pick<Job, 'tiles' | 'print'>,
  surface: SurfaceSpec,
  room: Room,
  pattern: Pattern,
): readonly Problem[] {
  const tooMany = tooManyPieces(surface, room, pattern);
  if (tooMany) return [tooMany];
  const found = patternProblems(pattern, surface.pattern, tiles, print.system);
  return found.map((one) => ({ ...one, path: [surface.name, 'pattern'], found: surface.name }));
}

function tooManyPieces({ name }: SurfaceSpec, { field }: Room, { a, b, tiles }: Pattern): Problem | null {
  const area = field.reduce((sum, shape) => sum + shapeArea(shape), 0);
  const about = Math.round((area * tiles.length) / (a[0] * b[1] - a[1] * b[0]));
  if (about <= MOST_PIECES) return null;
  const figures = { pieces: about, limit: MOST_PIECES };
  return { code: 'tooManyPieces', path: [name, 'pattern'], found: `${about}`, figures };
}

function noPieces({ name }: SurfaceSpec): Problem {
  return { code: 'noPieces', path: [name, 'pattern'], found: '0', figures: {} };
}

function unknownEdge({ name }: SurfaceSpec, axis: string, found: string, { faces }: Ground): Problem {
  const names = [...new Set(faces.map((face) => face.name))].join(', ');
  return {
    code: 'unknownEdge',
    path: [name, 'start', axis],
    found,
    figures: { name: found, names, near: 'no' },
  };
}
