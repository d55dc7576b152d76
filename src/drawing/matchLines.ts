import { type Box, corners } from './boxes.ts';
import type { Say } from './Drawing.ts';
import { firstFree } from './firstFree.ts';
import type { Mark, Spot } from './Mark.ts';
import type { PlanPart, Side } from './PlanParts.ts';
import type { Taken } from './takenBy.ts';
import { path, sizes, text } from './text.ts';

/** How far a page shows what lies beyond its match lines, and where their words stand, in mm from the line. */
export const overhang = 7;
export const wordsOff = 10.2;

/** Words stand in the middle of their line, or here along it. */
const shares = [0.5, 0.3, 0.7, 0.15, 0.85];

/** Both ends of a side of a box, and the way out of it. */
function sideOf(box: Box, side: Side): { ends: readonly [Spot, Spot]; out: Spot } {
  const [a, b, c, d] = corners(box) as [Spot, Spot, Spot, Spot];
  return {
    left: { ends: [a, d] as const, out: [-1, 0] as const },
    right: { ends: [b, c] as const, out: [1, 0] as const },
    below: { ends: [a, b] as const, out: [0, -1] as const },
    above: { ends: [d, c] as const, out: [0, 1] as const },
  }[side];
}

function wordsOf(box: Box, side: Side, words: string, taken: Taken): Mark {
  const { ends, out } = sideOf(box, side);
  const [[ax, ay], [bx, by]] = ends;
  const tries = shares.map((share) =>
    text([ax + (bx - ax) * share + out[0] * wordsOff, ay + (by - ay) * share + out[1] * wordsOff], words, {
      size: sizes.name,
      weight: 700,
      turn: out[0] === 0 ? 0 : 90,
    }),
  );
  return firstFree(tries, taken);
}

/** The lines along which a page joins its neighbours, each with the numbers of both pages, the smaller first. */
export function matchLines(part: PlanPart, box: Box, say: Say, taken: Taken): readonly Mark[] {
  return (Object.entries(part.next) as [Side, number][]).flatMap(([side, number]) => {
    const [one, other] = [Math.min(part.number, number), Math.max(part.number, number)];
    const words = say('drawing.match', { one, other });
    return [path(sideOf(box, side).ends, 'match'), wordsOf(box, side, words, taken)];
  });
}
