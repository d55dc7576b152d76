import type { StartWish } from '../../job/Job.ts';
import type { Ticks } from '../../measure/index.ts';
import type { Pattern } from '../../pattern/Pattern.ts';
import type { Ground } from '../frame/Ground.ts';
import { type AxisOffer, jointOnMiddle, tileOnMiddle } from './balanced.ts';
import { endCuts } from './endCuts.ts';
import type { FacingRun } from './findRuns.ts';
import { namedEdge } from './namedEdge.ts';
import { stretchOf } from './stretchOf.ts';

type Wish = Exclude<StartWish, { kind: 'best' }>;

/** What a wish leads to on one axis: the start, and the run where one is centred. */
export interface Wished {
  readonly offer: AxisOffer;
  readonly run?: FacingRun;
}

/**
 * The start that a job asks for on one axis, exact in ticks; an edge's name that is not found comes back
 * as such. At a wall that leans, a whole tile goes by the place where it stands farthest in, a cut and a
 * centre by its middle. An edge that is not square to the axis has no cut along it: there the middle of a
 * joint or of a tile goes on the middle of the edge, and a cut is what the edge leaves of the tile on the line along the axis
 * through the middle of the edge.
 */
export function wishedOffer(
  wish: Wish,
  ground: Ground,
  pattern: Pattern,
  axis: 0 | 1,
): Wished | { readonly unknown: string } {
  if (wish.kind === 'centred') return centred(wish, ground, pattern, axis);
  const name = wish.kind === 'cut' ? wish.at : wish.on;
  const edge = namedEdge(ground, name, axis);
  if (!edge) return { unknown: name };
  const { size, joint } = stretchOf({ low: 0, high: 0 }, pattern, axis);
  const fixed = (position: number): Wished => ({ offer: { what: 'fixed', position, shift: 0 } });
  if (wish.kind === 'joint') return fixed(edge.line + Math.ceil(joint / 2));
  if (wish.kind === 'cut' && edge.aslant) {
    const { field, way } = edge.aslant;
    return fixed(way > 0 ? field + wish.size - size : field - wish.size);
  }
  if (edge.side === 'none') return fixed(edge.line - Math.round(size / 2));
  if (wish.kind === 'tile') return fixed(edge.side === 'low' ? edge.innermost : edge.innermost - size);
  return fixed(edge.side === 'low' ? edge.field + wish.size - size : edge.field - wish.size);
}

function centred(
  { between, what }: Extract<Wish, { kind: 'centred' }>,
  ground: Ground,
  pattern: Pattern,
  axis: 0 | 1,
): Wished | { readonly unknown: string } {
  const [one, other] = between.map((name) => namedEdge(ground, name, axis));
  if (!one) return { unknown: between[0] };
  if (!other) return { unknown: between[1] };
  const [first, last] = one.line <= other.line ? [one, other] : [other, one];
  const run = {
    low: first.field,
    high: last.field,
    lowFace: first.index,
    highFace: last.index,
    overlap: 0,
    middle: 0,
  };
  const chosen = what ?? largerCuts(run, pattern, axis);
  const position = (chosen === 'joint' ? jointOnMiddle : tileOnMiddle)(stretchOf(run, pattern, axis));
  return { run, offer: { what: chosen, position, shift: 0 } };
}

/** What halves that come out odd can do to a cut. */
const ROUNDING: Ticks = 2;

/** Joint or tile on the middle, whichever leaves the larger smallest cut over every kind of course. */
function largerCuts(run: FacingRun, pattern: Pattern, axis: 0 | 1): 'joint' | 'tile' {
  const stretch = stretchOf(run, pattern, axis);
  const least = (position: number) =>
    Math.min(
      ...pattern.tiles.flatMap(({ ring }) => {
        const ahead = axis === 0 ? ring[0]![0] - pattern.tiles[0]!.ring[0]![0] : 0;
        return endCuts(stretch, position + ahead);
      }),
    );
  return least(jointOnMiddle(stretch)) >= least(tileOnMiddle(stretch)) - ROUNDING ? 'joint' : 'tile';
}
