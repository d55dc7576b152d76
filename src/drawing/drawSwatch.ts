import { corners } from './boxes.ts';
import type { Drawing, DrawOptions } from './Drawing.ts';
import type { Fill } from './hatches.ts';
import type { LineName } from './lineStyles.ts';
import { penSvg } from './penSvg.ts';

/** How a piece of a kind looks on the plan, and how pieces of each tile of a pattern. */
const looks = {
  whole: { line: 'piece' },
  cut: { line: 'piece', fill: 'cut' },
  hard: { line: 'hardPiece', fill: 'hard' },
  hidden: { line: 'piece', fill: 'hidden' },
  first: { line: 'piece' },
  second: { line: 'piece', fill: 'second' },
  third: { line: 'piece', fill: 'third' },
  fourth: { line: 'piece', fill: 'fourth' },
  fifth: { line: 'piece', fill: 'fifth' },
  sixth: { line: 'piece', fill: 'sixth' },
  narrowest: { line: 'thick', fill: 'cut' },
} as const satisfies Readonly<Record<string, { readonly line: LineName; readonly fill?: Fill }>>;

/** Wide enough for three repeats of any fill, in mm. */
const [widthMm, heightMm] = [10, 5] as const;

/** A small piece as a plan draws it, for the words beside it to explain. */
export function drawSwatch(look: keyof typeof looks, options: Pick<DrawOptions, 'id' | 'label'>): Drawing {
  const ring = corners({ left: 0.5, bottom: 0.5, right: widthMm - 0.5, top: heightMm - 0.5 });
  return penSvg([{ mark: 'area', rings: [ring], ...looks[look] }], {
    ...options,
    widthMm,
    heightMm,
    ratio: null,
  });
}
