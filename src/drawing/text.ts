import type { LineName } from './lineStyles.ts';
import type { FigureMark, PathMark, Spot, TextMark } from './Mark.ts';

/** Type sizes in points: names on the plan, the smallest allowed, dimensions and notes, and figures at the saw. */
export const sizes = { name: 10, smallest: 8, note: 11, saw: [30, 22] } as const;

/** A line of words; centred and clear of hatches unless told otherwise. */
export function text(
  at: Spot,
  words: string,
  given: Partial<Omit<TextMark, 'mark' | 'at' | 'text'>> = {},
): TextMark {
  return {
    mark: 'text',
    at,
    text: words,
    size: sizes.note,
    weight: 400,
    anchor: 'middle',
    turn: 0,
    clear: 'hatch',
    ...given,
  };
}

/** A size in the saw's type. */
export function sawFigure(
  at: Spot,
  parts: Pick<FigureMark, 'whole' | 'numerator' | 'denominator'>,
  given: Partial<Pick<FigureMark, 'anchor' | 'turn' | 'sizes'>> = {},
): FigureMark {
  const { whole, numerator, denominator } = parts;
  const fraction = numerator === undefined ? {} : { numerator, denominator: denominator ?? '' };
  return { mark: 'figure', at, whole, ...fraction, anchor: 'middle', turn: 0, sizes: sizes.saw, ...given };
}

/** An open line through spots. */
export function path(steps: readonly Spot[], line: LineName): PathMark {
  return { mark: 'path', steps, line };
}
