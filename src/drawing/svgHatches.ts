import type { Box } from './boxes.ts';
import { type Hatch, type HatchName, hatches } from './hatches.ts';
import type { AreaMark, CircleMark, Mark } from './Mark.ts';
import { markBounds } from './markBounds.ts';
import { roundMm } from './roundMm.ts';
import { svgPath } from './svgPath.ts';

type Filled = (AreaMark | CircleMark) & { readonly fill: HatchName };

/** Whole numbers k for which k times a step lies from one value to another. */
function multiples(from: number, to: number, step: number): readonly number[] {
  const first = Math.ceil(from / step);
  return Array.from({ length: Math.max(0, Math.floor(to / step) - first + 1) }, (_, i) => (first + i) * step);
}

/** Lines over a box, y down, from edge to edge of it; all lines of a hatch on a drawing lie on one grid. */
const ways = {
  rising: ({ left, bottom: top, right, top: bottom }: Box, apart: number) =>
    multiples(left + top, right + bottom, apart * Math.SQRT2).map((sum) => {
      const [from, to] = [Math.max(left, sum - bottom), Math.min(right, sum - top)];
      return [from, sum - from, to, sum - to] as const;
    }),
  falling: ({ left, bottom: top, right, top: bottom }: Box, apart: number) =>
    multiples(left - bottom, right - top, apart * Math.SQRT2).map((less) => {
      const [from, to] = [Math.max(left, less + top), Math.min(right, less + bottom)];
      return [from, from - less, to, to - less] as const;
    }),
  level: ({ left, bottom: top, right, top: bottom }: Box, apart: number) =>
    multiples(top, bottom, apart).map((y) => [left, y, right, y] as const),
  upright: ({ left, bottom: top, right, top: bottom }: Box, apart: number) =>
    multiples(left, right, apart).map((x) => [x, top, x, bottom] as const),
  /** A row of dots is a line of dashes without length; it begins on a dot. */
  dots: ({ left, bottom: top, right, top: bottom }: Box, apart: number) =>
    multiples(top, bottom, apart).map((y) => [Math.ceil(left / apart) * apart, y, right, y] as const),
};

function strokes({ apart, width, of, dash }: Hatch, box: Box): string {
  const lines = of.flatMap((way) => ways[way](box, apart));
  const d = lines.map(([x, y, toX, toY]) => `M${roundMm(x)},${roundMm(y)}L${roundMm(toX)},${roundMm(toY)}`);
  const dashes = dash ? ` stroke-dasharray="${dash.join(' ')}"` : '';
  const dots = of.includes('dots') ? ` stroke-dasharray="0 ${apart}" stroke-linecap="round"` : dashes;
  return `<path d="${d.join('')}" fill="none" stroke="#000" stroke-width="${width}"${dots}`;
}

/**
 * The hatches of all areas that have one, under names that begin with the drawing's id. They are lines that the areas cut
 * off: a pattern would be put into the PDF as a picture in greys, which a printer without greys breaks up.
 */
export function svgHatches(marks: readonly Mark[], height: number, id: string): string {
  return (Object.keys(hatches) as HatchName[])
    .map((name) => {
      const own = marks.filter((mark): mark is Filled => 'fill' in mark && mark.fill === name);
      if (own.length === 0) return '';
      const bounds = markBounds(own);
      const box = { ...bounds, bottom: height - bounds.top, top: height - bounds.bottom };
      const d = own.map((mark) => svgPath(mark, height)).join('');
      const areas = `<clipPath id="${id}-${name}"><path d="${d}" clip-rule="evenodd"/></clipPath>`;
      return `${areas}${strokes(hatches[name], box)} clip-path="url(#${id}-${name})"/>`;
    })
    .join('');
}
