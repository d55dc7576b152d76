import type { Job } from '../job/Job.ts';
import type { Candidate } from '../layout/Layout.ts';
import { layAnother } from '../layout/layAnother.ts';
import { makeTilePlans } from '../tiles/makeTilePlans.ts';
import { cutsWithoutRows } from './cutsWithoutRows.ts';
import type { Stages } from './makeSurface.ts';
import type { CurvePoint, PacketChoice } from './Packet.ts';
import { seenPieces } from './seenPieces.ts';

/** Layouts that differ by less than this are one to the eye: shares of a tile and of the pieces, together. */
const LEAST_DIFFERENCE = 0.04;

/**
 * For each surface the start that differs most from the chosen one, laid out so that it can be shown beside it: of those beside it, or
 * else of the curve's; undefined where there is none that an owner could tell apart, and once the work has begun.
 *
 * @param curves one a surface, empty where none is drawn.
 */
export function makeChoices(
  job: Job,
  stages: readonly Stages[],
  curves: readonly (readonly CurvePoint[])[],
): readonly (PacketChoice | undefined)[] {
  return stages.map((_, i) => (job.status === 'planned' ? choiceOf(job, stages, curves[i]!, i) : undefined));
}

function choiceOf(
  job: Job,
  stages: readonly Stages[],
  curve: readonly CurvePoint[],
  i: number,
): PacketChoice | undefined {
  const { surface, room, layout } = stages[i]!;
  const { chosen, runnerUp, alternatives } = layout.start;
  const beside = [...(runnerUp ? [runnerUp] : []), ...alternatives];
  const further = curve.slice(1).map(({ candidate }) => candidate);
  const other = mostDifferent(chosen, beside) ?? mostDifferent(chosen, further);
  if (!other) return undefined;
  const laid = layAnother(layout, surface, room, job.print.step, other);
  const cuts = cutsWithoutRows(job, laid);
  const plans = makeTilePlans(
    job,
    stages.map((stage, at) => (at === i ? laid : stage.layout)),
    stages.map((stage, at) => (at === i ? cuts : stage.cuts)),
  );
  return {
    candidate: other,
    pieces: seenPieces(laid.pieces),
    buy: Object.fromEntries(Object.entries(plans).map(([key, { buy, boxes }]) => [key, { buy, boxes }])),
  };
}

/** How far two starts are from each other in what an owner sees of them. */
function difference(one: Candidate, other: Candidate): number {
  const pieces = Math.max(one.pieces, other.pieces, 1);
  return (
    Math.abs(one.smallestShare - other.smallestShare) +
    Math.abs(one.pieces - other.pieces) / pieces +
    Math.abs(one.cut - other.cut) / pieces
  );
}

/** A start with another joint is another floor, and one with strips too thin is no offer where the chosen one has none. */
function mostDifferent(chosen: Candidate, others: readonly Candidate[]): Candidate | undefined {
  const offers = others.filter(
    (one) =>
      one.reason.every(({ code }) => code !== 'start.easedJoint') && (one.thin ?? 0) <= (chosen.thin ?? 0),
  );
  const [best] = [...offers].sort((a, b) => difference(b, chosen) - difference(a, chosen));
  return best && difference(best, chosen) >= LEAST_DIFFERENCE ? best : undefined;
}
