import { type Box, boxOf, boxRound } from './boxes.ts';
import type { Mark, Spot, Step } from './Mark.ts';
import { textBox } from './textBox.ts';

const isSpot = (step: Step): step is Spot => !('centre' in step);

/** The boxes that words, flags and signs among the marks take, so that no name is put on them. */
export function takenBy(marks: readonly Mark[]): readonly Box[] {
  return marks.flatMap((mark) => {
    if (mark.mark === 'text' || mark.mark === 'figure') return [textBox(mark)];
    if (mark.mark === 'circle' && mark.fill) return [boxRound(mark.centre, 2 * mark.radius, 2 * mark.radius)];
    if (mark.mark === 'area' && (mark.fill === 'paper' || mark.fill === 'ink'))
      return [boxOf(mark.rings.flat().filter(isSpot))];
    return [];
  });
}
