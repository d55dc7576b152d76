import type { Fill } from './hatches.ts';
import type { LineName } from './lineStyles.ts';
import type { AreaMark, Mark, Spot } from './Mark.ts';
import { mmPerPoint } from './textWidth.ts';

/** A rectangle from its lower left corner. */
export function rectangle(
  at: Spot,
  width: number,
  height: number,
  look: { readonly line?: LineName; readonly fill?: Fill },
): AreaMark {
  const [x, y] = at;
  return { mark: 'area', rings: [[[x, y], [x + width, y], [x + width, y + height], [x, y + height]]], ...look }; // biome-ignore format: a rectangle on a line
}

/** A circle in a line, a fill or both. */
export function circle(
  centre: Spot,
  radius: number,
  look: { readonly line?: LineName; readonly fill?: Fill },
): Mark {
  return { mark: 'circle', centre, radius, ...look };
}

/** Height in mm of a line of type. */
export const lineHeight = (points: number): number => points * mmPerPoint * 1.25;
