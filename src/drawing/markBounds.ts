import { type Box, boxOf, boxRound, boxRoundAll } from './boxes.ts';
import type { Mark, Spot, Step } from './Mark.ts';
import { textBox } from './textBox.ts';

/** An arc's box is found from this many of its spots: near enough for a margin. */
const arcSpots = 16;

const spotsOf = (steps: readonly Step[]): readonly Spot[] =>
  steps.flatMap((step) => {
    if (!('centre' in step)) return [step];
    const { centre, radius, from, to } = step;
    return Array.from({ length: arcSpots + 1 }, (_, i): Spot => {
      const angle = from + ((to - from) * i) / arcSpots;
      return [centre[0] + radius * Math.cos(angle), centre[1] + radius * Math.sin(angle)];
    });
  });

function boxOfMark(mark: Mark): Box {
  if (mark.mark === 'text' || mark.mark === 'figure') return textBox(mark);
  if (mark.mark === 'circle') return boxRound(mark.centre, 2 * mark.radius, 2 * mark.radius);
  return boxOf(spotsOf(mark.mark === 'path' ? mark.steps : mark.rings.flat()));
}

/** The box that all marks take together. */
export function markBounds(marks: readonly Mark[]): Box {
  return boxRoundAll(marks.map(boxOfMark));
}

const moved = ([x, y]: Spot, [dx, dy]: Spot): Spot => [x + dx, y + dy];

function moveStep(step: Step, by: Spot): Step {
  return 'centre' in step ? { ...step, centre: moved(step.centre, by) } : moved(step, by);
}

function moveMark(mark: Mark, by: Spot): Mark {
  if (mark.mark === 'path') return { ...mark, steps: mark.steps.map((step) => moveStep(step, by)) };
  if (mark.mark === 'area')
    return { ...mark, rings: mark.rings.map((ring) => ring.map((step) => moveStep(step, by))) };
  return mark.mark === 'circle'
    ? { ...mark, centre: moved(mark.centre, by) }
    : { ...mark, at: moved(mark.at, by) };
}

/** Marks moved together. */
export function moveMarks(marks: readonly Mark[], by: Spot): readonly Mark[] {
  return marks.map((mark) => moveMark(mark, by));
}

/** Marks moved so that they stand `edge` mm inside a drawing just large enough for them. */
export function trimmed(marks: readonly Mark[], edge = 1) {
  const box = markBounds(marks);
  const by: Spot = [edge - box.left, edge - box.bottom];
  return {
    marks: moveMarks(marks, by),
    widthMm: box.right - box.left + 2 * edge,
    heightMm: box.top - box.bottom + 2 * edge,
  };
}
