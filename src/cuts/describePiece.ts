import type { Ticks } from '../measure/index.ts';
import type { Cut, CutKind, CutSize } from './Cut.ts';
import { cornerSizes } from './cornerSizes.ts';
import { axisOf } from './edgeFacts.ts';
import { type Form, formOf } from './formOf.ts';
import type { OutlineEdge, TileSide } from './Outline.ts';
import { outerSizes, type Sized } from './outerSizes.ts';
import { filledOutlineOf, outlineOf } from './outlineOf.ts';
import { notchSizes, uSizes } from './pocketSizes.ts';
import { roundSizes } from './roundSizes.ts';
import type { OwnPiece } from './TileBox.ts';

/** How a piece is cut, in the axes in which it is given. */
export interface Description {
  readonly kind: CutKind;
  readonly sizes: readonly CutSize[];
  readonly fences: Cut['fences'];
  readonly edges: readonly OutlineEdge[];
  readonly factory: readonly TileSide[];
  readonly taper: Ticks;
}

/** Bends that a saw cannot follow: a quarter of its step, and what rounding leaves. */
const toleranceOf = (step: Ticks): number => Math.max(4, Math.floor(step / 4));

/**
 * Reads how a piece is cut: its kind, its sizes from factory edges, exact and saw, and the fence settings.
 *
 * @example
 * describePiece({ box: { length: 96000, width: 96000 }, shape: { outer: [[0, 0], [62000, 0], [62000, 96000], [0, 96000]], holes: [] }, circles: [] }, 508).kind //=> 'rip'
 */
export function describePiece(piece: OwnPiece, step: Ticks): Description {
  const tolerance = toleranceOf(step);
  const edges = outlineOf(piece, tolerance, step / 2, step);
  const arcs = edges.flatMap(({ circle }) => circle ?? []);
  const filled = arcs.length > 0 ? filledOutlineOf(piece, tolerance, step / 2) : edges;
  const factory = new Set(edges.flatMap(({ on }) => on ?? []));
  const form = formOf(filled, piece.box.ring !== undefined);
  const base = baseSizes(filled, form, factory, piece, step);
  const sizes = [...base.sizes, ...roundSizes(piece, arcs, factory, step)];
  return {
    kind: kindOf(
      form,
      base.sizes,
      arcs.length > 0 || edges.some(({ via }) => via),
      piece.shape.holes.length > 0,
    ),
    sizes,
    fences: base.fences.filter(({ on }) => hasSide(piece.box, on)),
    edges,
    factory: (['left', 'right', 'bottom', 'top'] as const).filter((side) => factory.has(side)),
    taper: taperOf(filled),
  };
}

function baseSizes(
  edges: readonly OutlineEdge[],
  { form, pocket }: Form,
  factory: ReadonlySet<TileSide>,
  { box }: OwnPiece,
  step: Ticks,
): Sized {
  if (form === 'full') return { sizes: [], fences: [] };
  if (form === 'point' || form === 'odd')
    return { sizes: cornerSizes(edges, factory, box, step, form === 'point'), fences: [] };
  const outer = outerSizes(
    edges.filter((_, i) => !pocket.includes(i)),
    box,
    step,
  );
  if (form === 'rectangle') return outer;
  const measure = form === 'u' ? uSizes : notchSizes;
  const inner = measure(
    pocket.map((i) => edges[i]!),
    factory,
    box,
    step,
  );
  return { sizes: [...outer.sizes, ...inner.sizes], fences: [...outer.fences, ...inner.fences] };
}

function kindOf({ form }: Form, sizes: readonly CutSize[], arc: boolean, hole: boolean): CutKind {
  if (form === 'odd') return 'odd';
  if (arc || hole) return form === 'notch' || form === 'u' ? 'odd' : hole ? 'hole' : 'curve';
  if (form === 'full') return 'odd';
  if (form !== 'rectangle') return form;
  if (sizes.some(({ what }) => what.endsWith('Length'))) return 'taper';
  return sizes.length > 1 ? 'corner' : 'rip';
}

/** Whether a tile has a side there that lies along the fence; one that is no rectangle may have a point. */
function hasSide({ length, width, ring }: OwnPiece['box'], on: TileSide): boolean {
  if (!ring) return true;
  const [axis, at] = { left: [0, 0], right: [0, length], bottom: [1, 0], top: [1, width] }[on] as [
    0 | 1,
    number,
  ];
  return ring.filter((point) => point[axis] === at).length > 1;
}

/** The most that a near square sawn edge runs out over its length. */
function taperOf(edges: readonly OutlineEdge[]): Ticks {
  const runs = edges.map((edge) => {
    const axis = axisOf(edge);
    if (edge.what !== 'sawn' || axis === 'oblique') return 0;
    return Math.abs(axis === 'x' ? edge.to[0] - edge.from[0] : edge.to[1] - edge.from[1]);
  });
  const most = Math.max(0, ...runs);
  return most > 4 ? most : 0;
}
