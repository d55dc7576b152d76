import type { Ticks } from '../../measure/index.ts';
import type { EdgeFacts, Meets } from '../Job.ts';
import { leaf } from '../shape/leaf.ts';
import type { Path } from '../shape/Trouble.ts';
import { length } from '../values/length.ts';
import { oneOf } from '../values/oneOf.ts';
import { yesNo } from '../values/yesNo.ts';
import { type Notes, trouble } from './Notes.ts';

/** What an edge of the field may run along. */
export const meetsWords: readonly Meets[] = [
  'wall',
  'cabinet',
  'tub',
  'doorway',
  'floor',
  'hearth',
  'casing',
  'post',
  'jamb',
  'flange',
  'pipe',
  'column',
  'island',
  'stair',
  'drain',
];

const seen = oneOf(['hidden', 'plain', 'focal']);

/** Keys that every edge of the field may have. */
export const edgeShape = {
  meets: leaf(oneOf(meetsWords), 'What the tile meets there.').optional(),
  gap: leaf(length, 'Gap between tile and this face.').optional(),
  'gap max': leaf(length, 'Largest gap that is still covered, by base board, casing or sealant.').optional(),
  touch: leaf(yesNo, 'Whether a tape can reach this face at floor level.').optional(),
  seen: leaf(seen, 'hidden, plain or focal: how much this edge is looked at.').optional(),
};

/** Those keys as read. */
export interface GivenEdge {
  readonly meets?: Meets | undefined;
  readonly gap?: Ticks | undefined;
  readonly 'gap max'?: Ticks | undefined;
  readonly touch?: boolean | undefined;
  readonly seen?: EdgeFacts['seen'] | undefined;
}

/** Gaps that a surface has where an edge has none of its own. */
export interface Gaps {
  readonly gap: Ticks;
  /** Largest gap under base board or casing. */
  readonly covered: Ticks;
  /** How much wider than asked a gap may be that nothing covers. */
  readonly spare: Ticks;
}

/** What an edge is unless the file says otherwise. */
export interface EdgeDefault {
  readonly meets: Meets;
  readonly seen?: EdgeFacts['seen'];
  readonly touch?: boolean;
  readonly gapMax?: Ticks;
}

function largestGap(given: GivenEdge, meets: Meets, gap: Ticks, gaps: Gaps): Ticks {
  if (given['gap max'] !== undefined) return given['gap max'];
  return meets === 'wall' || meets === 'casing' ? Math.max(gap, gaps.covered) : gap + gaps.spare;
}

/** The facts of one edge, defaults filled in. */
export function edgeFacts(
  given: GivenEdge,
  usual: EdgeDefault,
  gaps: Gaps,
  path: Path,
  notes: Notes,
): EdgeFacts {
  const meets = given.meets ?? usual.meets;
  const gap = given.gap ?? gaps.gap;
  const gapMax = given['gap max'] ?? usual.gapMax ?? largestGap(given, meets, gap, gaps);
  if (gapMax < gap) trouble(notes, 'gapMaxUnderGap', [...path, 'gap max']);
  return {
    meets,
    gap,
    gapMax,
    touch: given.touch ?? usual.touch ?? true,
    seen: given.seen ?? usual.seen ?? 'plain',
  };
}
