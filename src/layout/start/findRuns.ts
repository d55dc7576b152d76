import { leftOf, type Point, rotate } from '../../geometry/index.ts';
import { TICKS_PER_INCH, type Ticks } from '../../measure/index.ts';
import type { Face } from '../frame/Face.ts';
import { reachAt, type SlabEdge, slabsOf } from './slabs.ts';
import { sortNearly } from './sortNearly.ts';

/** Two faces that look at each other across the field along one axis, and where the field ends at them. */
export interface FacingRun {
  readonly low: Ticks;
  readonly high: Ticks;
  readonly lowFace: number;
  readonly highFace: number;
  /** How much of the other axis they face each other over, and where the middle of that is. */
  readonly overlap: number;
  readonly middle: number;
}

/** Walls up to about ten degrees out of square still face along the axis. */
export const MOST_LEAN = 0.18;
/** Two runs whose ends lie no farther apart are one. */
const SAME: Ticks = 4;
/** A run over less width than this, where another is four times as wide, is a jog. */
const JOG: Ticks = 24 * TICKS_PER_INCH;

/**
 * The runs along an axis (0 for x, 1 for y), longest first, jogs last: each pair of walls, cabinets or other
 * straight faces with open field between them. Circles do not interrupt a run, doorways do not make one.
 * Where a wall leans, its end is measured half way along what faces it; a curved wall counts by its chord. The edges may be
 * turned by `turn` radians against the faces.
 */
export function findRuns(
  all: readonly SlabEdge[],
  faces: readonly Face[],
  axis: 0 | 1,
  turn = 0,
): FacingRun[] {
  const chords = faces.map((face, index) => chordOf(face, index, axis, turn));
  const facing = (edge: SlabEdge) => upright(chords[edge.face] ?? edge) && !faces[edge.face]!.doorway;
  const straight = all.filter(({ face }) => !faces[face]!.circle);
  const toChords = ({ low, high, ...span }: Span) => ({
    ...span,
    low: chords[low.face] ?? low,
    high: chords[high.face] ?? high,
  });
  return ranked(merged(spansOf(straight, faces, axis, facing).map((span) => runOf(toChords(span)))));
}

/** A slab and the edges that bound it there. */
interface Met {
  readonly low: SlabEdge;
  readonly high: SlabEdge;
  readonly from: number;
  readonly to: number;
}

interface Span {
  /** The longest edges of both sides, which have their lines best. */
  readonly low: SlabEdge;
  readonly high: SlabEdge;
  /** The slabs in which they see each other. */
  readonly slabs: readonly Met[];
  readonly from: number;
  readonly to: number;
  readonly overlap: number;
}

/** Pairs of walls with field between them, over all the slabs in which they see each other. */
function spansOf(
  all: readonly SlabEdge[],
  faces: readonly Face[],
  axis: 0 | 1,
  counts: (edge: SlabEdge) => boolean,
): Span[] {
  const spans = new Map<string, Span>();
  for (const { from, to, pairs } of slabsOf(all, axis)) {
    for (const [low, high] of pairs) {
      if (!counts(low) || !counts(high)) continue;
      const key = `${wholeWall(faces[low.face]!)} ${wholeWall(faces[high.face]!)}`;
      const known = spans.get(key);
      spans.set(key, {
        low: known ? longer(known.low, low) : low,
        high: known ? longer(known.high, high) : high,
        slabs: [...(known?.slabs ?? []), { low, high, from, to }],
        from: known?.from ?? from,
        to,
        overlap: (known?.overlap ?? 0) + to - from,
      });
    }
  }
  return [...spans.values()];
}

/** A wall that doorways split is one wall, named as a whole; a side of an obstacle or a doorway is itself. */
function wholeWall({ id, name }: Face): string {
  return id.startsWith(`${name}.`) ? name : id;
}

function longer(known: SlabEdge, edge: SlabEdge): SlabEdge {
  const length = ({ from, to }: SlabEdge) => Math.abs(to[1] - from[1]);
  return length(edge) > length(known) + SAME ? edge : known;
}

function runOf({ low, high, from, to, overlap }: Omit<Span, 'slabs'>): FacingRun {
  const middle = (from + to) / 2;
  return {
    low: Math.round(reachAt(low, middle)),
    high: Math.round(reachAt(high, middle)),
    lowFace: low.face,
    highFace: high.face,
    overlap,
    middle,
  };
}

/** Along a curved wall a run ends at the gap of its chord, seen with that axis as x; undefined for a straight face. */
function chordOf({ curve, gap }: Face, face: number, axis: 0 | 1, turn: number): SlabEdge | undefined {
  if (!curve) return undefined;
  const [from, to] = curve.chord;
  const [a, b] = [from, to].map((end) => rotate(leftOf(from, to, end, gap), turn)) as [Point, Point];
  const seen = (point: Point): Point => (axis === 0 ? point : [point[1], point[0]]);
  return { from: seen(a), to: seen(b), face };
}

function upright({ from, to }: Pick<SlabEdge, 'from' | 'to'>): boolean {
  return Math.abs(to[0] - from[0]) <= MOST_LEAN * Math.abs(to[1] - from[1]);
}

/** Runs with the same ends become one. */
function merged(runs: readonly FacingRun[]): FacingRun[] {
  const kept: FacingRun[] = [];
  for (const run of [...runs].sort((a, b) => b.overlap - a.overlap)) {
    const near = ({ low, high }: FacingRun) =>
      Math.abs(low - run.low) <= SAME && Math.abs(high - run.high) <= SAME;
    const same = kept.findIndex(near);
    if (same < 0) kept.push(run);
    else kept[same] = { ...kept[same]!, overlap: kept[same]!.overlap + run.overlap };
  }
  return kept;
}

function ranked(runs: readonly FacingRun[]): FacingRun[] {
  const widest = Math.max(0, ...runs.map(({ overlap }) => overlap));
  const isJog = ({ overlap }: FacingRun) => overlap < Math.min(JOG, widest / 4) - SAME;
  return [...byLength(runs.filter((run) => !isJog(run))), ...byLength(runs.filter(isJog))];
}

/** The longest first, of those that are as long the one over most field. */
function byLength(runs: readonly FacingRun[]): FacingRun[] {
  const length = ({ low, high }: FacingRun) => high - low;
  return sortNearly(runs, length, SAME, (a, b) => b.overlap - a.overlap);
}

/** The longest stretch of field along an axis, whatever ends it: for fields where no two walls face. */
export function longestSpan(all: readonly SlabEdge[], faces: readonly Face[], axis: 0 | 1): FacingRun {
  const runs = spansOf(all, faces, axis, () => true).map(({ slabs, ...span }) => {
    const bent = [span.low, span.high].some(({ face }) => faces[face]!.curve || faces[face]!.circle);
    return runOf(bent ? { ...span, ...metAtMiddle(slabs, (span.from + span.to) / 2) } : span);
  });
  return byLength(runs)[0]!;
}

/**
 * Of curves a chord is met, which must not be drawn on to where another lies: those of the slab nearest to the middle, there; of two as
 * near, as on both sides of an island, the longer.
 */
function metAtMiddle(slabs: readonly Met[], middle: number): Met {
  const off = ({ from, to }: Met) => Math.max(0, from - middle, middle - to);
  const nearest = Math.min(...slabs.map(off));
  const near = slabs
    .filter((slab) => off(slab) <= nearest + SAME)
    .map((slab) => ({ ...slab, at: Math.min(slab.to, Math.max(slab.from, middle)) }));
  const long = ({ low, high, at }: (typeof near)[number]) => reachAt(high, at) - reachAt(low, at);
  const { at, ...best } = near.reduce((one, other) => (long(other) > long(one) ? other : one));
  return { ...best, from: at, to: at };
}
