import type { Point } from '../../geometry/index.ts';
import type { Ticks } from '../../measure/index.ts';
import { apartOf, type JointLine, type Stretch } from './chalkLine.ts';

/** Two joint lines that cross on open floor. */
export interface Crossing {
  readonly crossing: Point;
  readonly stretches: readonly [Stretch, Stretch];
  /** Lines that cannot be snapped: beside a wall, or without two marks far enough apart. */
  readonly unfit: number;
  readonly beside: number;
  /** How often marks lie much nearer than others' do, or a line ends at a corner. */
  readonly poor: number;
  readonly off: number;
}

export interface CrossingQuestion {
  /** Joints each way, upright ones first. */
  readonly joints: readonly [readonly JointLine[], readonly JointLine[]];
  /** Middle of the longest run each way. */
  readonly middle: Point;
  /** How far apart two marks must lie. */
  readonly least: Ticks;
  /** Whether a wall runs close beside a stretch along that axis. */
  readonly isBeside: (stretch: Stretch, axis: 0 | 1) => boolean;
  readonly endsAtCorner: (stretch: Stretch) => boolean;
}

/** Marks nearer together than this share of the farthest of that axis make a line worse, not only shorter. */
const SHORT = 0.75;

/**
 * The pair to snap: both clear of walls and with two marks that a tape can reach, if there are such; clear of
 * walls before marked; marks as far apart as that axis offers, or nearly, and off corners; then nearest to the
 * middle of the longest runs, where cuts are balanced from.
 */
export function bestCrossing(question: CrossingQuestion): Crossing | undefined {
  const { joints, middle, least, isBeside } = question;
  const [upright, level] = joints;
  const close = new Set(
    ([0, 1] as const).flatMap((axis) => stretchesOf(joints[axis]).filter((one) => isBeside(one, axis))),
  );
  const clear = joints.map((lines) => stretchesOf(lines).filter((one) => !close.has(one)));
  const corner = new Set(joints.flatMap(stretchesOf).filter(question.endsAtCorner));
  const [high, wide] = clear.map((stretches) => Math.max(0, ...stretches.map(apartOf))) as [number, number];
  let best: Crossing | undefined;
  for (const one of upright) {
    for (const other of level) {
      const along = one.stretches.find(({ from, to }) => from[1] < other.at && other.at < to[1]);
      const across = other.stretches.find(({ from, to }) => from[0] < one.at && one.at < to[0]);
      if (!along || !across) continue;
      const apart = [apartOf(along), apartOf(across)] as const;
      const beside = [close.has(along), close.has(across)] as const;
      const found: Crossing = {
        crossing: [one.at, other.at],
        stretches: [along, across],
        unfit: apart.filter((length, i) => length < least || beside[i]).length,
        beside: beside.filter(Boolean).length,
        poor:
          [apart[0] < SHORT * high, apart[1] < SHORT * wide].filter(Boolean).length +
          [along, across].filter((stretch) => corner.has(stretch)).length,
        off: Math.abs(one.at - middle[0]) + Math.abs(other.at - middle[1]),
      };
      if (!best || isBetter(found, best)) best = found;
    }
  }
  return best;
}

function isBetter(a: Crossing, b: Crossing): boolean {
  return (a.unfit - b.unfit || a.beside - b.beside || a.poor - b.poor || a.off - b.off) < 0;
}

function stretchesOf(lines: readonly JointLine[]): Stretch[] {
  return lines.flatMap(({ stretches }) => stretches);
}
