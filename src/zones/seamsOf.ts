import { bounds, shapeArea } from '../geometry/index.ts';
import type { SurfaceSpec } from '../job/Job.ts';
import type { Layout, Piece } from '../layout/Layout.ts';
import { drawnTogether } from '../layout/movement/drawnTogether.ts';
import { pulledApart } from '../layout/movement/pulledApart.ts';

/** Where a field is split: lines across one axis, on the middle of joints, in rising order. */
export interface Seams {
  readonly axis: 0 | 1;
  readonly at: readonly number[];
}

/**
 * The seams that part a field into `count` parts of about equal area. They run along straight joints, across the longer way
 * where the pattern has straight joints both ways; a pattern with none is split between the middles of its tiles.
 */
export function equalSeams(layout: Layout, count: number): Seams {
  const axis = splitAxis(layout);
  const steps = new Map<number, number>();
  for (const piece of layout.pieces) {
    const step = stepOf(layout, piece, axis);
    steps.set(step, (steps.get(step) ?? 0) + shapeArea(piece.shape));
  }
  const courses = [...steps].sort((a, b) => a[0] - b[0]);
  const total = courses.reduce((sum, [, area]) => sum + area, 0);
  const at: number[] = [];
  let sum = 0;
  for (const [step, area] of courses.slice(0, -1)) {
    const wanted = ((at.length + 1) * total) / count;
    // The seam goes to the joint behind this course unless the next joint comes nearer to the wanted share.
    const next = courses.find(([one]) => one > step)![1];
    sum += area;
    if (at.length < count - 1 && Math.abs(sum - wanted) <= Math.abs(sum + next - wanted))
      at.push(jointAt(layout, step + 1, axis));
  }
  return { axis, at };
}

/** The seams on the joints nearest to some distances from a wall. */
export function wishedSeams(layout: Layout, wish: Extract<SurfaceSpec['zones'], { kind: 'splits' }>): Seams {
  const edges = layout.frame.edges.filter(({ id, name }) => name === wish.from || id === wish.from);
  const edge = edges[0];
  if (!edge) return { axis: 0, at: [] };
  const [dx, dy] = [edge.to[0] - edge.from[0], edge.to[1] - edge.from[1]];
  const axis = Math.abs(dy) >= Math.abs(dx) ? 0 : 1;
  // The room lies on the left of its walls.
  const into = axis === 0 ? (dy > 0 ? -1 : 1) : dx > 0 ? 1 : -1;
  const start = (edge.from[axis] + edges[edges.length - 1]!.to[axis]) / 2;
  const joints = wish.at.map((distance) => {
    const step = modulesTo(layout, start + into * distance, axis);
    return jointAt(layout, Math.round(step), axis);
  });
  return { axis, at: [...new Set(joints)].sort((a, b) => a - b) };
}

/** Which part a piece belongs to, from 0 at the low end. */
export function partOf(piece: Piece, { axis, at }: Seams): number {
  const middle = middleOf(piece, axis);
  return at.filter((seam) => seam < middle).length;
}

function splitAxis({ pattern, pieces }: Layout): 0 | 1 {
  if (pattern.straightX !== pattern.straightY) return pattern.straightX ? 0 : 1;
  const box = bounds(pieces.map(({ fullTile }) => fullTile));
  return box.maxX - box.minX >= box.maxY - box.minY ? 0 : 1;
}

function moduleOf({ pattern, pieces }: Layout, axis: 0 | 1): number {
  if (pattern.module[axis] > 0) return pattern.module[axis];
  const box = bounds(pieces[0]!.fullTile);
  return (axis === 0 ? box.maxX - box.minX : box.maxY - box.minY) + pattern.joint;
}

function middleOf({ fullTile }: Piece, axis: 0 | 1): number {
  const box = bounds(fullTile);
  return axis === 0 ? (box.minX + box.maxX) / 2 : (box.minY + box.maxY) / 2;
}

/** Number of the course in which the middle of a piece lies, 0 right after the crossing. */
function stepOf(layout: Layout, piece: Piece, axis: 0 | 1): number {
  return Math.floor(modulesTo(layout, middleOf(piece, axis), axis));
}

/** Modules from the crossing to a place. */
function modulesTo(layout: Layout, place: number, axis: 0 | 1): number {
  const [from, to] = [layout.chalk.crossing[axis], place].map((one) =>
    drawnTogether(layout.wide ?? [], axis, one),
  );
  return (to! - from!) / moduleOf(layout, axis);
}

function jointAt(layout: Layout, step: number, axis: 0 | 1): number {
  const { wide = [], chalk } = layout;
  const from = drawnTogether(wide, axis, chalk.crossing[axis]);
  return pulledApart(wide, axis, from + step * moduleOf(layout, axis));
}
