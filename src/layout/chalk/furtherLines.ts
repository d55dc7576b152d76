import { bounds } from '../../geometry/index.ts';
import { modulesInReach, REACH } from '../../trade/index.ts';
import type { ChalkLine } from '../Layout.ts';
import { drawnTogether } from '../movement/drawnTogether.ts';
import { pulledApart } from '../movement/pulledApart.ts';
import { apartOf, jointLine, leastApart } from './chalkLine.ts';
import type { FurtherQuestion } from './FurtherQuestion.ts';
import { isBeside, roomBeside } from './isBeside.ts';
import { legLines } from './legLines.ts';

/**
 * Lines beside the two through the crossing, on every so-manieth joint, as many modules apart as a reach
 * holds, wherever two marks give one its direction: upright ones first, from the crossing outwards, then
 * those of legs that none of these is in reach of. Courses that step by a length have no upright joint in common, so there they are left out.
 */
export function furtherLines(
  main: readonly ChalkLine[],
  question: FurtherQuestion,
): Omit<ChalkLine, 'name'>[] {
  const { faces, pattern, system } = question;
  return ([0, 1] as const).flatMap((axis) => {
    const own = main[axis];
    if (!own || (axis === 0 && !pattern.straightX && pattern.b[0] !== 0)) return [];
    const at = own.from[axis];
    const near = roomBeside(pattern.module[axis], system);
    const step = pattern.module[axis] * modulesInReach(pattern.module[axis], REACH.value[system]);
    const onGrid = places(at, step, axis, question).flatMap((place) =>
      jointLine(place, axis, faces)
        .stretches.filter((stretch) => apartOf(stretch) >= leastApart(system))
        .filter((stretch) => !isBeside(stretch, faces, near))
        .filter(
          ({ from, to }) =>
            place !== at || !(from === own.from || to === own.to || overlaps(own, from, axis)),
        )
        .map((stretch) => ({
          axis: axis === 0 ? ('along' as const) : ('across' as const),
          ...stretch,
          snappable: true,
        })),
    );
    const joints = places(at, pattern.module[axis], axis, question).sort((a, b) => a - b);
    return [...onGrid, ...legLines(axis, joints, [own, ...onGrid], question)];
  });
}

/** From the line itself outwards, to either side, as far as half a tile still lies beyond. */
function places(
  place: number,
  step: number,
  axis: 0 | 1,
  { frame: { outline }, pattern, wide = [] }: FurtherQuestion,
): number[] {
  const box = bounds(outline);
  const least = pattern.module[axis] / 2;
  const together = (one: number) => drawnTogether(wide, axis, one);
  const [at, ...ends] = [place, ...(axis === 0 ? [box.minX, box.maxX] : [box.minY, box.maxY])].map(together);
  const [low, high] = [ends[0]! + least, ends[1]! - least];
  const found = [at!];
  for (let n = 1; at! + n * step <= high || at! - n * step >= low; n++)
    found.push(...[at! + n * step, at! - n * step].filter((one) => one <= high && one >= low));
  return found.map((one) => pulledApart(wide, axis, one));
}

/** Whether a stretch on the same line begins where a line begins. */
function overlaps({ from, to }: ChalkLine, [x, y]: readonly [number, number], axis: 0 | 1): boolean {
  const t = axis === 0 ? y : x;
  const [low, high] = axis === 0 ? [from[1], to[1]] : [from[0], to[0]];
  return t >= low && t <= high;
}
