import { type Box, boxOf, corners } from './boxes.ts';
import type { LineName } from './lineStyles.ts';
import type { Mark, Spot } from './Mark.ts';
import type { PlanPart, PlanParts } from './PlanParts.ts';
import type { Scale } from './Scale.ts';
import { boxedWord } from './signs.ts';
import { path } from './text.ts';

/** Where a part lies on a drawing of the whole surface. */
function boxOn({ window }: PlanPart, scale: Scale): Box {
  const at = (x: number, y: number): Spot => [
    scale.spot[0] + x * scale.paperMmPerTick,
    scale.spot[1] + y * scale.paperMmPerTick,
  ];
  return boxOf([at(window.left, window.bottom), at(window.right, window.top)]);
}

/** The parts of a plan by their names on a drawing of the whole of it, each boxed in the middle of its place: circles are lines and cuts. */
export function partNames(
  { parts }: PlanParts,
  scale: Scale,
  size: number,
  nameOf: (part: PlanPart) => string,
): readonly Mark[] {
  return parts.flatMap((part) => {
    const { left, bottom, right, top } = boxOn(part, scale);
    return boxedWord([(left + right) / 2, (bottom + top) / 2], nameOf(part), size);
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
