import { bounds, intersect, type Point, type Ring, type Shape } from '../geometry/index.ts';
import type { Layout, Piece } from '../layout/Layout.ts';
import { PASSAGE, WORKWAY } from '../trade/index.ts';
import { meetingLines } from './meetingLines.ts';
import type { Part } from './partsInOrder.ts';
import type { WayOut } from './wayOutOf.ts';

/** How far a piece may reach over a side of the floor that is kept before it counts as lying on it. */
const SLIGHT = PASSAGE.value / 4;

/** From how many times the width one needs on an opening is no door that stays whole. */
const WIDE = 2;

/**
 * The same parts, but with all of the only doorway in the last of them, and as much floor behind it as one needs to turn there with boxes and
 * buckets: who sets the parts between works through it for days, so that nothing laid before may stand in it.
 */
export function doorwayLast(
  layout: Layout,
  parts: readonly Part[],
  wayOut: WayOut | undefined,
): readonly Part[] {
  if (!wayOut?.only || parts.length < 2) return parts;
  const strip = stripOf(layout, wayOut);
  const box = bounds(strip.outer);
  const isInStrip = ({ shape }: Piece) => {
    const { minX, minY, maxX, maxY } = bounds(shape.outer);
    const isNear = minX < box.maxX && maxX > box.minX && minY < box.maxY && maxY > box.minY;
    return isNear && intersect([shape], [strip]).length > 0;
  };
  const moved = parts.slice(0, -1).flatMap(({ pieces }) => pieces.filter(isInStrip));
  if (moved.length === 0 || staysWide(moved, wayOut)) return parts;
  const isMoved = new Set(moved);
  const left = parts.map((part, i): Part => {
    if (i === parts.length - 1) return { pieces: [...part.pieces, ...moved] };
    const pieces = part.pieces.filter((piece) => !isMoved.has(piece));
    return pieces.length < part.pieces.length ? { pieces } : part;
  });
  const own = left.filter(({ pieces }) => pieces.length > 0);
  return own.map((part, i) => {
    // What is taken from others stays later than a part that gives none, so that its seam stays too.
    if (parts.includes(part)) return part;
    const later = own.slice(i + 1).flatMap(({ pieces }) => pieces);
    const seam = meetingLines(part.pieces, later, layout.pattern.joint);
    return seam.length > 0 ? { ...part, seam } : part;
  });
}

/** Whether an opening wider than any door has room enough beside what is laid in it before the last zone. */
function staysWide(laid: readonly Piece[], { line: { from, to } }: WayOut): boolean {
  const long = Math.hypot(to[0] - from[0], to[1] - from[1]);
  if (long < WIDE * WORKWAY.value) return false;
  const along = ([x, y]: Point) =>
    ((x - from[0]) * (to[0] - from[0]) + (y - from[1]) * (to[1] - from[1])) / long;
  const places = laid.map(({ shape }) => shape.outer.map(along));
  const sides = places.map((own) => [Math.min(...own), Math.max(...own)] as const);
  const starts = [0, ...sides.map(([, high]) => high)];
  const room = starts.map((start) => {
    if (sides.some(([low, high]) => low <= start && start < high)) return 0;
    return Math.min(long, ...sides.map(([low]) => low).filter((low) => low > start)) - start;
  });
  return Math.max(...room) >= WORKWAY.value;
}

/** The floor of the doorway, and that before it from jamb to jamb. */
function stripOf({ frame }: Layout, { name, line: { from, to } }: WayOut): Shape {
  const long = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const [ux, uy] = [(to[0] - from[0]) / long, (to[1] - from[1]) / long];
  // The floor lies on the left of the line.
  const off = ([x, y]: Point) => (y - from[1]) * ux - (x - from[0]) * uy;
  const own = frame.edges.filter((edge) => edge.name === name);
  const deep =
    Math.max(...own.map((edge) => Math.max(off(edge.from), off(edge.to)))) + WORKWAY.value - SLIGHT;
  const at = (along: number, into: number): Point => [
    Math.round(from[0] + along * ux - into * uy),
    Math.round(from[1] + along * uy + into * ux),
  ];
  const [low, high] = [SLIGHT, long - SLIGHT];
  const outer: Ring = [at(low, 0), at(high, 0), at(high, deep), at(low, deep)];
  return { outer, holes: [] };
}
