import { type Box, boxOf, corners } from './boxes.ts';
import type { LineName } from './lineStyles.ts';
import type { Mark, Spot } from './Mark.ts';
import type { PlanPart, PlanParts } from './PlanParts.ts';
import type { Scale } from './Scale.ts';
import { path, text } from './text.ts';

/** Where a part lies on a drawing of the whole surface. */
function boxOn({ window }: PlanPart, scale: Scale): Box {
  const at = (x: number, y: number): Spot => [
    scale.spot[0] + x * scale.paperMmPerTick,
    scale.spot[1] + y * scale.paperMmPerTick,
  ];
  return boxOf([at(window.left, window.bottom), at(window.right, window.top)]);
}

/** The parts of a plan by their numbers on a drawing of the whole of it, each in the middle of its place. */
export function partNumbers({ parts }: PlanParts, scale: Scale, size: number): readonly Mark[] {
  return parts.map((part) => {
    const { left, bottom, right, top } = boxOn(part, scale);
    const middle: Spot = [(left + right) / 2, (bottom + top) / 2];
    return text(middle, String(part.number), { size, weight: 700, clear: 'all' });
  });
}

/** Every part as a rectangle; its line tells one from the others. */
export function partFrames(
  { parts }: PlanParts,
  scale: Scale,
  lineOf: (part: PlanPart) => LineName,
): readonly Mark[] {
  return parts.map((part) => ({
    mark: 'area',
    rings: [corners(boxOn(part, scale))],
    line: lineOf(part),
  }));
}

/** Where parts meet: each line between two of them once. */
export function partSeams({ parts }: PlanParts, scale: Scale): readonly Mark[] {
  return parts.flatMap((part) => {
    const [a, b, c] = corners(boxOn(part, scale)) as [Spot, Spot, Spot];
    const right = part.next.right === undefined ? [] : [path([b, c], 'match')];
    return part.next.below === undefined ? right : [...right, path([a, b], 'match')];
  });
}
