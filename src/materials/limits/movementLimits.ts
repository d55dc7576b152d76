import type { Job } from '../../job/Job.ts';
import { bayRuns } from '../../layout/movement/bayRuns.ts';
import { isFold } from '../../room/isFold.ts';
import {
  bayLimit,
  type Limit,
  MOVEMENT,
  movementBays,
  PERIMETER_GAP,
  perimeterGap,
} from '../../trade/index.ts';
import { fieldRuns } from '../fieldRuns.ts';
import type { Laid } from '../laidSurfaces.ts';
import { limitOf } from './limitOf.ts';

/** Movement joints: the longest runs of a field against the largest bay, and the gap at each of its edges. */
export function movementLimits(job: Job, laid: Laid): readonly Limit[] {
  return [...bayLimits(job, laid), ...gapLimits(job, laid)];
}

function bayLimits(job: Job, { spec, layout }: Laid): readonly Limit[] {
  const limit = bayLimit(spec.exposure, job.base.heated, job.print.system);
  const exposed = spec.exposure !== 'dry' || job.base.heated;
  const lines = layout.movement?.lines ?? [];
  const longest = lines.length > 0 ? bayRuns(layout, lines) : undefined;
  return fieldRuns(layout).map((whole, axis) => {
    const run = longest?.[axis] ?? whole;
    const pass = run <= limit;
    return limitOf(MOVEMENT, {
      rule: `movement.${exposed ? 'exposed' : 'dry'}.${axis === 0 ? 'along' : 'across'}`,
      bound: 'most',
      surface: spec.name,
      found: run,
      limit,
      unit: 'ticks',
      pass,
      ...(pass ? placed(layout, axis, whole > limit, run) : wouldPass(layout, run, limit)),
    });
  });
}

/** Where soft joints make the bays: how many, on the axes that lie along this direction of the room. */
function placed(
  { movement, turn }: Laid['layout'],
  axis: number,
  needs: boolean,
  each: number,
): Pick<Limit, 'wouldPass'> {
  if (!movement || !needs) return {};
  const quarters = (2 * turn) / Math.PI;
  const aslant = Math.abs(quarters - Math.round(quarters)) > 1e-9;
  const name = (Math.round(quarters) + axis) % 2 === 0 ? 'along' : 'across';
  const jointCount = movement.lines.filter((line) => aslant || line.axis === name).length;
  return {
    wouldPass: { code: 'limit.movement.placed', figures: { bayCount: jointCount + 1, jointCount, each } },
  };
}

function wouldPass({ movement }: Laid['layout'], run: number, limit: number): Pick<Limit, 'wouldPass'> {
  const { bays, each } = movementBays(run, limit);
  const code = movement?.missing.length ? 'limit.movement.noJoint' : 'limit.movement.pass';
  return {
    wouldPass: { code, figures: { bayCount: bays, jointCount: bays - 1, each: Math.round(each) } },
  };
}

/** The narrowest gap of the surface against the least; then, as advice, edges under the wanted gap. Tile meets the strainer of a drain at a joint (TCNA EJ171, as reported). */
function gapLimits(job: Job, { spec, layout }: Laid): readonly Limit[] {
  const { wanted, least } = perimeterGap(job.print.system);
  const standing = layout.frame.obstacles.filter((one) => !isFold(one) && one.facts.meets !== 'drain');
  const edges = [...layout.frame.edges, ...standing.flatMap(({ edges }) => edges)];
  if (edges.length === 0) return [];
  const narrowest = Math.min(...edges.map(({ gap }) => gap));
  const under = (limit: number) => edges.filter(({ gap }) => gap < limit).map(({ id }) => id);
  const row = (rule: string, limit: number) =>
    limitOf(PERIMETER_GAP, {
      rule,
      bound: 'least',
      surface: spec.name,
      found: narrowest,
      limit,
      unit: 'ticks',
      pass: narrowest >= limit,
      ...(narrowest >= limit
        ? {}
        : { at: under(limit), wouldPass: { code: `limit.${rule}.pass`, figures: { gap: limit } } }),
    });
  const must = row('gap.least', least);
  return must.pass && narrowest < wanted ? [must, { ...row('gap.wanted', wanted), advice: true }] : [must];
}
