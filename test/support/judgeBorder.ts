import type { Layout } from '../../src/layout/Layout.ts';
import type { MovementLine } from '../../src/layout/movement/Movement.ts';
import { judge, toJsts } from '../geometry/oracle.ts';

/** What is thinner than this, in ticks, is left over from rounding. */
const SLIVER = 3;

/**
 * Whether no joint of a border is wider than it should be, its outer course lies on the wall's gap, and none of its pieces lies in the
 * field inside or out on that gap: its pieces and that field, each grown by half a joint, cover the floor. What is left out counts with
 * a joint round it, and where no more than a joint is left along the wall, or at the tip of a mitre, there may be no tile. A soft joint may be half
 * a saw step wider on each side, which nobody saws off. Knows nothing of courses and corners.
 */
export function judgeBorder(layout: Layout, step = 508): string[] {
  const { pieces, left, field, inner: within, movement, pattern } = layout;
  const { joint } = pattern;
  const own = pieces.filter((piece) => piece.border);
  const floor = toJsts(field);
  const inner = toJsts(within!);
  const covered = [
    judge.grown(toJsts(own.map(({ shape }) => shape)), joint / 2 + SLIVER),
    judge.grown(inner, joint / 2 + SLIVER),
    ...left.map(({ shape }) => judge.grown(toJsts([shape]), joint + SLIVER)),
    judge.difference(floor, judge.grown(floor, -joint)),
    ...(movement?.lines ?? []).flatMap((line) => stripsOf(line, step / 2 + SLIVER)),
  ];
  const open = covered.reduce((rest, one) => judge.difference(rest, one), floor);
  const wrong = partsOf(open)
    .filter((part) => part.getArea() > joint * joint)
    .map((part) => `${Math.round(part.getArea())} open at ${part.getEnvelopeInternal().toString()}`);
  const band = judge.difference(judge.grown(floor, SLIVER), judge.grown(inner, joint - SLIVER));
  const edge = floor.getBoundary();
  const behind = own.filter(({ border: of }) => of!.course === 0).map(({ shape }) => toJsts([shape]));
  const offWall = (piece: Geometry) =>
    Math.min(judge.distance(piece, edge), ...behind.map((one) => judge.distance(piece, one) - joint));
  const aslant = (movement?.lines ?? []).filter(({ axis }) => isAslant(layout, axis));
  const ends = aslant.flatMap((line) => stripsOf(line, SLIVER));
  const first = own.filter(({ border: of }) => of!.course === 1);
  const tips = new Set(
    first.filter((piece) => {
      const shape = toJsts([piece.shape]);
      return isEnd(piece, 0, first) || ends.some((end) => judge.distance(shape, end) === 0);
    }),
  );
  for (const piece of own) {
    const { id, shape, border: of } = piece;
    const out = judge.difference(toJsts([shape]), band).getArea();
    if (out > 0) wrong.push(`${id}: ${Math.round(out)} lies outside`);
    const off = of!.course === 1 && !tips.has(piece) ? offWall(toJsts([shape])) : 0;
    if (off > SLIVER) wrong.push(`${id}: ${Math.round(off)} off the wall's gap`);
  }
  return wrong;
}

/** Whether soft joints of an axis meet a wall at another angle than a square one: a tile there may leave a tip, as at a mitre. */
function isAslant({ border }: Layout, axis: MovementLine['axis']): boolean {
  return border!.lines.some(({ from, to }) => {
    const by = [to[0] - from[0], to[1] - from[1]].map(Math.abs);
    const share = by[axis === 'along' ? 0 : 1]! / Math.hypot(...by);
    return share > 0.1 && share < 0.99;
  });
}

/** The strips that a soft joint takes of the floor, so much wider on each side. */
function stripsOf({ axis, width, parts }: MovementLine, more: number): Geometry[] {
  const half = width / 2 + more;
  return parts.map(({ from: [x, y], to: [u, v] }) => {
    const [dx, dy] = axis === 'along' ? [half, 0] : [0, half];
    const outer = [[x - dx, y - dy], [u + dx, y - dy], [u + dx, v + dy], [x - dx, v + dy]] as const; // biome-ignore format: corners on a line
    return toJsts([{ outer, holes: [] }]);
  });
}

// biome-ignore lint/suspicious/noExplicitAny: the library's own types do not cover its geometry.
type Geometry = any;

/** The first or the last piece along its wall: of a mitre it may be the tip only. */
function isEnd(piece: Layout['pieces'][number], _: number, all: Layout['pieces']): boolean {
  const columns = all.filter(({ border }) => border!.wall === piece.border!.wall).map(({ column }) => column);
  return piece.column === Math.min(...columns) || piece.column === Math.max(...columns);
}

function partsOf(geometry: Geometry): Geometry[] {
  return Array.from({ length: geometry.getNumGeometries() }, (_, i) => geometry.getGeometryN(i));
}
