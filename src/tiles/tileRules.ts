import { distanceShapes, ringLength, side } from '../geometry/index.ts';
import type { Ticks } from '../measure/index.ts';
import type { CutClass, Placement } from './CutClass.ts';
import { linesPart } from './linesPart.ts';
import { placementsOf } from './placementsOf.ts';
import { settleTile } from './settleTile.ts';
import { slidesClear } from './slidesClear.ts';

/** What may lie in one tile. */
export interface TileRules {
  readonly classes: readonly CutClass[];
  /** Ways for each class to lie, the unturned one first. */
  readonly ways: readonly (readonly Placement[])[];
  /** Area a class needs with half a kerf all round, and what a tile has of it. */
  readonly needs: readonly number[];
  readonly room: number;
  /** Whether the saw can part two, or all, where they lie or slide to. */
  readonly partsTwo: (a: Placement, b: Placement) => boolean;
  readonly partsAll: (placements: readonly Placement[]) => boolean;
  /** Whether two, or all, are far enough apart for any cut at all between them: what the bound goes by. */
  readonly mayPartTwo: (a: Placement, b: Placement) => boolean;
  readonly mayPartAll: (placements: readonly Placement[]) => boolean;
  /** Where they stay. */
  readonly settle: (placements: readonly Placement[]) => readonly Placement[] | undefined;
}

/** Two ticks for what rounding moved: they only ever make the bound lower. */
const ROUNDED = 2;

export function tileRules(classes: readonly CutClass[], kerf: Ticks): TileRules {
  const half = Math.max(0, kerf - ROUNDED) / 2;
  // Pieces a kerf apart do not overlap when each is grown by half of it, nor leave the tile grown by as much.
  const grown = (area: number, around: number) => area + around * half + Math.PI * half * half;
  const box = classes[0]?.box ?? { length: 0, width: 0 };
  const gap = kept((a, b) => Math.max(clearOf(a, b), clearOf(b, a)));
  const settle = (placements: readonly Placement[]) => settleTile(placements, kerf);
  const far = (a: Placement, b: Placement, least: Ticks) => {
    if ((a.corners & b.corners) !== 0) return false;
    const clear = gap(a, b);
    if (clear >= least || clear <= 0) return clear >= least;
    return distanceShapes({ outer: a.ring, holes: [] }, { outer: b.ring, holes: [] }) >= least;
  };
  const mayPartAll = (placements: readonly Placement[]) => {
    const staying = placements.filter((one) => stays(one)).map(({ ring }) => ring);
    return linesPart(staying, kerf - ROUNDED) && slidesClear(placements, kerf - ROUNDED);
  };
  const slidApart = kept((a, b) => settle([a, b]) !== undefined);
  const slideApart = kept((a, b) => mayPartAll([a, b]));
  return {
    classes,
    ways: classes.map(placementsOf),
    needs: classes.map(({ area, ring }) => grown(area, ringLength(ring))),
    room: grown(box.length * box.width, 2 * (box.length + box.width)),
    settle,
    partsTwo: (a, b) => (stays(a) && stays(b) ? far(a, b, kerf) : slidApart(a, b)),
    partsAll: (placements) => settle(placements) !== undefined,
    mayPartTwo: (a, b) => (stays(a) && stays(b) ? far(a, b, kerf - ROUNDED) : slideApart(a, b)),
    mayPartAll,
  };
}

const stays = ({ slides }: Placement) => !slides.along && !slides.across;

/** Keeps what is asked of two placements. */
function kept<Answer>(ask: (a: Placement, b: Placement) => Answer): (a: Placement, b: Placement) => Answer {
  const known = new Map<Placement, Map<Placement, Answer>>();
  return (a, b) => {
    const row = known.get(a) ?? new Map<Placement, Answer>();
    known.set(a, row);
    const before = row.get(b);
    if (before !== undefined) return before;
    const answer = ask(a, b);
    row.set(b, answer);
    return answer;
  };
}

/** How far b lies outside that edge of a which it lies farthest outside of; less than 0 where it is outside none. */
function clearOf({ ring: a }: Placement, { ring: b }: Placement): number {
  let most = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < a.length; i++) {
    const [from, to] = [a[i]!, a[(i + 1) % a.length]!];
    let least = Number.POSITIVE_INFINITY;
    for (const point of b) least = Math.min(least, -side(from, to, point));
    most = Math.max(most, least / Math.hypot(to[0] - from[0], to[1] - from[1]));
  }
  return most;
}
