import type { Span } from '../../geometry/index.ts';
import type { System, Ticks } from '../../measure/index.ts';
import { modulesInReach, REACH } from '../../trade/index.ts';
import type { ChalkLine } from '../Layout.ts';
import { apartOf, jointLine, leastApart, type Stretch } from './chalkLine.ts';
import type { FurtherQuestion } from './FurtherQuestion.ts';
import { type FaceOffsets, faceOffsets } from './faceOffsets.ts';
import { isBeside, roomBeside } from './isBeside.ts';

type FurtherLine = Omit<ChalkLine, 'name'>;

/** A stretch of a joint from face to face, the number of its joint, and how much of it no line is in reach of. */
interface Bare {
  readonly stretch: Stretch;
  readonly joint: number;
  readonly bare: number;
}

/**
 * A line of its own for each leg of the floor: where a joint runs on for more than a reach and no line along it lies within reach over
 * open floor, however near others are behind a wall. In each leg the line with two marks, else the one that distances off a wall strike; of
 * these the longest, nearest to the middle of those as long.
 *
 * `places` are the joints from side to side in rising order, `lines` those there are already.
 */
export function legLines(
  axis: 0 | 1,
  places: readonly Ticks[],
  lines: readonly Pick<ChalkLine, 'from' | 'to'>[],
  question: FurtherQuestion,
): FurtherLine[] {
  const joints = places.map((at) => jointLine(at, axis, question.faces).stretches);
  const reach = modulesInReach(question.pattern.module[axis], REACH.value[question.system]);
  const added: FurtherLine[] = [];
  for (;;) {
    const served = servedBy([...lines, ...added], { axis, places, joints, reach });
    const legs = bareOf(joints, served, axis, REACH.value[question.system]);
    const found = bestOf(legs, axis, question);
    if (!found) return added;
    added.push(found);
  }
}

interface Joints {
  readonly axis: 0 | 1;
  readonly places: readonly Ticks[];
  readonly joints: readonly (readonly Stretch[])[];
  readonly reach: number;
}

/** Of each joint what lies beside a line, at most a reach of joints off, with nothing between. */
function servedBy(
  lines: readonly Pick<ChalkLine, 'from' | 'to'>[],
  { axis, places, joints, reach }: Joints,
): readonly (readonly Span[])[] {
  const served = joints.map((): Span[] => []);
  for (const line of lines) {
    const at = places.indexOf(line.from[axis]);
    if (at < 0) continue;
    for (const way of [-1, 1]) {
      let open: readonly Span[] = [spanOf(line, axis)];
      for (let i = at; i >= 0 && i < joints.length && Math.abs(i - at) <= reach; i += way) {
        open = joints[i]!.flatMap((stretch) => open.flatMap((span) => common(span, spanOf(stretch, axis))));
        served[i]!.push(...open);
      }
    }
  }
  return served;
}

function bareOf(
  joints: Joints['joints'],
  served: readonly (readonly Span[])[],
  axis: 0 | 1,
  least: Ticks,
): Bare[] {
  return joints.flatMap((stretches, joint) =>
    stretches
      .map((stretch) => ({ stretch, joint, bare: bareIn(spanOf(stretch, axis), served[joint]!) }))
      .filter(({ bare }) => bare > least),
  );
}

function bestOf(legs: readonly Bare[], axis: 0 | 1, question: FurtherQuestion): FurtherLine | undefined {
  const { faces, pattern, system } = question;
  const near = roomBeside(pattern.module[axis], system);
  const lines = legs.flatMap((leg) => {
    const line = lineOn(leg.stretch, axis, system);
    const isStruck = line.snappable || isNearFace(faceOffsets({ ...line, name: '' }, faces, system));
    return isStruck && !isBeside(line, faces, near) ? [{ ...leg, line }] : [];
  });
  const marked = lines.some(({ line }) => line.snappable);
  const good = lines.filter(({ line }) => line.snappable === marked);
  const most = Math.max(0, ...good.map(({ bare }) => bare));
  const long = good.filter(({ bare }) => bare >= NEARLY * most);
  return long[Math.floor((long.length - 1) / 2)]?.line;
}

/** Whether a face is nearer to the line than its two marks are apart: from farther off they would turn it by more than laid tile does. */
function isNearFace(offsets: FaceOffsets | undefined): boolean {
  if (!offsets) return false;
  const places = offsets.stations.map(({ distance }) => distance);
  const far = Math.max(...offsets.stations.map(({ offset }) => offset));
  return far <= Math.max(...places) - Math.min(...places);
}

/** Lines of at least this share of the longest are as long. */
const NEARLY = 0.98;

function lineOn(stretch: Stretch, axis: 0 | 1, system: System): FurtherLine {
  const snappable = apartOf(stretch) >= leastApart(system);
  return { axis: axis === 0 ? 'along' : 'across', ...stretch, snappable };
}

function spanOf({ from, to }: Pick<Stretch, 'from' | 'to'>, axis: 0 | 1): Span {
  return { from: from[1 - axis]!, to: to[1 - axis]! };
}

function common(a: Span, b: Span): Span[] {
  const [from, to] = [Math.max(a.from, b.from), Math.min(a.to, b.to)];
  return from < to ? [{ from, to }] : [];
}

/** How much of a span lies in none of others. */
function bareIn(whole: Span, served: readonly Span[]): number {
  let [bare, reached] = [0, whole.from];
  const within = served.flatMap((span) => common(whole, span)).sort((a, b) => a.from - b.from);
  for (const { from, to } of within) {
    bare += Math.max(0, from - reached);
    reached = Math.max(reached, to);
  }
  return bare + whole.to - reached;
}
