import { type Point, unite } from '../geometry/index.ts';
import type { SurfaceSpec } from '../job/Job.ts';
import type { Problem } from '../job/Problem.ts';
import type { Pattern } from '../pattern/Pattern.ts';
import { borderJoints } from './border/borderJoints.ts';
import { flushStart } from './border/flushStart.ts';
import { chalkGround } from './chalk/chalkGround.ts';
import { coursesOn } from './chalk/coursesOn.ts';
import { firstTile } from './chalk/firstTile.ts';
import { makeChalk } from './chalk/makeChalk.ts';
import { sightOf } from './chalk/sightOf.ts';
import { type ChippedFloor, cutBetweenChips } from './chips/cutBetweenChips.ts';
import { faultsOf } from './faults/faultsOf.ts';
import { jointsVary } from './faults/jointsVary.ts';
import { offsetBound } from './faults/offsetBound.ts';
import type { RoomInFrame } from './frame/frameRoom.ts';
import type { Ground } from './frame/Ground.ts';
import type { Chalk, ChalkLine, Layout, Piece, Rival, Start } from './Layout.ts';
import { onJoints } from './movement/onJoints.ts';
import { pulledApart } from './movement/pulledApart.ts';
import type { WideJoint } from './movement/WideJoint.ts';
import { namePieces, pieceOf } from './names/namePieces.ts';
import type { LaidPiece } from './pieces/LaidPiece.ts';
import { type Lattice, makeLattice } from './pieces/Lattice.ts';
import { laidPieces } from './pieces/laidPieces.ts';
import { type Laid, layTiles } from './pieces/layTiles.ts';
import type { ReadyFloor } from './readyFloor.ts';
import type { Apart } from './setApart.ts';
import type { MainRuns } from './start/Choice.ts';
import { evaluate } from './start/evaluate.ts';
import { makeTapers } from './taper/makeTapers.ts';

/**
 * The layout of a floor that is ready, from its best start; joints that are wished wide go to the nearest joints of the start.
 *
 * @param instead One of the `rivals` of a layout of this floor, to start there.
 */
export function layFloor(
  floor: ReadyFloor,
  instead?: Rival,
): Layout | { readonly problems: readonly Problem[] } {
  const { job, surface, room, pattern, plain, turn, apart, drawn, chosen } = floor;
  const flush = flushStart(withRival(chosen.start, instead), chosen.runs, drawn, plain, surface.start);
  const { origin } = flush.chosen;
  const chipped = cutBetweenChips(floor, origin);
  const { ground, runs } = chipped ?? { ground: floor.ground, runs: chosen.runs };
  const frame = chipped ? ground.frame : floor.frame;
  const wide = onJoints(floor.wished, plain, origin);
  const laid = layTiles(ground, pattern, origin, wide);
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
    turn,
    frame,
    pattern,
    origin,
    ...(wide.length > 0 && { wide }),
    start: recounted(flush, plain, chipped ?? { ground: drawn, runs }, laid),
    ...(chosen.rivals.length > 0 && { rivals: chosen.rivals }),
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
    ...(chipped && { chips: chipped.chips }),
    ...apartIn(apart, ground, laid, chalk.lines.length + (chalk.further ?? []).length),
  };
}

/** A start with another in its place; the one that was the best before is then the second. */
function withRival(start: Start, instead: Rival | undefined): Start {
  return instead ? { ...start, ...instead, runnerUp: start.chosen } : start;
}

/** A start with the counts of the tiles as they lie, where it was chosen on a ground drawn together or with other gaps. */
function recounted(
  start: Start,
  plain: Pattern,
  { ground, runs, chips }: Pick<ChippedFloor, 'ground' | 'runs'> & Partial<Pick<ChippedFloor, 'chips'>>,
  laid: Laid,
): Start {
  if (laid.lattice.wide.length === 0 && !chips) return start;
  const { along, across, chosen } = start;
  const { origin, shift, reason } = chosen;
  const counts = evaluate(ground, plain, { origin, along, across, shift }, runs, laid);
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
    ...firstTile(chalk.crossing, lattice.pattern, pieces, { courses, further }),
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

/** Border and inlays of a floor that has them, and what they leave of the field; so many lines are snapped before. */
function apartIn(
  { border, inlays, pieces }: Apart,
  { frame }: Ground,
  laid: Laid,
  snapped: number,
): Pick<Layout, 'border' | 'inlays' | 'inner'> {
  return {
    ...(border && { border }),
    ...(inlays.length > 0 && { inlays: namedAfter(inlays, snapped) }),
    ...(pieces.length > 0 && { inner: tiledField(frame, laid.border) }),
  };
}

/** Inlays whose lines are numbered on from those that are snapped before them. */
function namedAfter(inlays: Apart['inlays'], snapped: number): Apart['inlays'] {
  let next = snapped + 1;
  return inlays.map((inlay) => {
    const { chalk } = inlay;
    if (!chalk) return inlay;
    return {
      ...inlay,
      chalk: { ...chalk, lines: chalk.lines.map((line) => ({ ...line, name: `${next++}` })) },
    };
  });
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
