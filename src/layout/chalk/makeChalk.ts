import type { Point } from '../../geometry/index.ts';
import type { Ticks } from '../../measure/index.ts';
import type { Pattern } from '../../pattern/Pattern.ts';
import type { Chalk, ChalkLine } from '../Layout.ts';
import type { WideJoint } from '../movement/WideJoint.ts';
import { bestCrossing } from './bestCrossing.ts';
import { type ChalkGround, facesOf } from './chalkGround.ts';
import { apartOf, jointLine, leastApart } from './chalkLine.ts';
import { cornerLines } from './cornerLines.ts';
import { type Counting, countedFrom } from './countedFrom.ts';
import { courseOrigin } from './courseOrigin.ts';
import type { Faces } from './Faces.ts';
import { faceOffsets } from './faceOffsets.ts';
import { fromOneZero } from './fromOneZero.ts';
import { furtherLines } from './furtherLines.ts';
import { endsAtCorner, isBeside, roomBesideMain } from './isBeside.ts';
import { jointsOn } from './jointsOn.ts';
import { lineError, offsetsError, squaredError } from './lineError.ts';
import { squareCheck } from './squareCheck.ts';
import { storyPoles } from './storyPoles.ts';

/** What the chalk lines are chosen by. */
export interface ChalkQuestion extends ChalkGround {
  readonly pattern: Pattern;
  readonly origin: Point;
  readonly wide: readonly WideJoint[];
  /** Middle of the longest run each way. */
  readonly middle: Point;
}

/**
 * One chalk line each way on a joint, upright first, named in the order of snapping; further ones beside
 * them; the check and the sticks. What only the pieces tell, such as the first one, is told later.
 */
export function makeChalk(question: ChalkQuestion): Omit<Chalk, 'firstPiece'> {
  const { frame, pattern, origin, wide, middle, system } = question;
  const faces = facesOf(question);
  const upright = jointsOn(0, frame, pattern, courseOrigin(question), wide);
  const level = jointsOn(1, frame, pattern, origin, wide);
  const near = pattern.module.map((module) => roomBesideMain(module, system));
  const best = bestCrossing({
    joints: [upright.map((at) => jointLine(at, 0, faces)), level.map((at) => jointLine(at, 1, faces))],
    middle,
    least: leastApart(system),
    isBeside: (stretch, axis) => isBeside(stretch, faces, near[axis]!),
    endsAtCorner: (stretch) => endsAtCorner(stretch, faces, system),
  });
  if (!best) return { crossing: middle, lines: [], check: { legs: [0, 0], diagonal: 0 } };
  const { crossing, stretches } = best;
  const check = squareCheck(crossing, stretches, faces.floor, system);
  const main = named(stretches, leastApart(system));
  const slanted = cornerLines({ frame, faces, pattern, system, origin, middle });
  const more = slanted.corners ? slanted.lines : furtherLines(main, { frame, faces, pattern, system, wide });
  const further = more.map((line, i) => ({ ...line, name: `${main.length + i + 1}` }));
  const inOrder = [...main].sort(bySnapping);
  const read = fromOneZero([...inOrder, ...further]).map((line) => finish(line, faces, question));
  const lines = main.map(({ name }) => read.find((line) => line.name === name)!);
  return {
    crossing,
    lines: lines.map((line, i) => squared(line, lines[1 - i]!, { crossing, check }, question)),
    check,
    further: read.slice(main.length),
    ...(slanted.corners ? { corners: slanted.corners } : { poles: storyPoles(frame, pattern, system) }),
  };
}

/** Both lines; the one whose marks lie farther apart is snapped first, as the truer of the two. */
function named(
  stretches: NonNullable<ReturnType<typeof bestCrossing>>['stretches'],
  least: Ticks,
): ChalkLine[] {
  const [one, other] = stretches.map(apartOf) as [number, number];
  return stretches.map((stretch, i) => ({
    name: (i === 0) === one >= other ? '1' : '2',
    axis: i === 0 ? 'along' : 'across',
    ...stretch,
    snappable: apartOf(stretch) >= least,
  }));
}

function bySnapping(a: ChalkLine, b: ChalkLine): number {
  return Number(a.name) - Number(b.name);
}

/** A line with how it is struck and how true it is, its distances from a face, and the tile that begins at it. */
export function finish(
  line: ChalkLine,
  faces: Faces,
  question: Pick<ChalkQuestion, 'system' | 'step' | keyof Counting>,
): ChalkLine {
  const found = faceOffsets(line, faces, question.system);
  const offsets = found && { edge: found.edge, end: found.end, stations: found.stations };
  const byOffsets = line.snappable ? undefined : found;
  const error = byOffsets
    ? offsetsError(line, byOffsets, question)
    : line.snappable && lineError(line, faces, question);
  const counted = countedFrom(line, faces, question);
  return {
    ...line,
    ...(offsets ? { offsets } : {}),
    ...(byOffsets ? { byOffsets: true } : {}),
    ...(error ? { error } : {}),
    ...(counted ? { counted } : {}),
  };
}

/** A line without two marks as it is truer: through marks off a face beside it, or squared off the other line where that has two. */
function squared(
  line: ChalkLine,
  other: ChalkLine,
  crossed: Pick<Chalk, 'crossing' | 'check'>,
  question: ChalkQuestion,
): ChalkLine {
  if (line.snappable) return line;
  const error = other.snappable && squaredError(line, other, crossed, question);
  if (!error || (line.byOffsets && line.error && line.error.off <= error.off)) return line;
  const { byOffsets: _, ...square } = line;
  return { ...square, error };
}
