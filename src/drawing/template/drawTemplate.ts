import type { Box } from '../boxes.ts';
import type { Drawing, DrawOptions } from '../Drawing.ts';
import type { Mark, Spot } from '../Mark.ts';
import { moveMarks } from '../markBounds.ts';
import { penSvg } from '../penSvg.ts';
import { circle } from '../shapes.ts';
import { sizes, text } from '../text.ts';
import { textWidth } from '../textWidth.ts';
import { deepest } from './deepest.ts';
import { ownWindow, registerMarks } from './registerMarks.ts';
import type { TemplatePlan } from './TemplatePlan.ts';
import { templateMarks } from './templateMarks.ts';

/** What stays readable when the template is cut out: the number of the cut, and lines under it. */
export interface TemplateWords {
  readonly number: string;
  readonly lines: readonly string[];
}

/** Radius of the number's circle, room for it and size of its figures, large and on a small piece; height of a line of words; in mm. */
const rings = [
  { radius: 7, least: 9, size: 20 },
  { radius: 4, least: 5, size: 11 },
] as const;
const line = 5;

/** The number in its circle, and the lines under it as far as they fit, at the deepest place of the piece on this page. */
function wordMarks(plan: TemplatePlan, window: Box, words: TemplateWords): readonly Mark[] {
  const places = deepest([plan.laid.shape], window);
  if (places.length === 0) return [];
  const { at, room } = places.reduce((a, b) => (b.room > a.room ? b : a));
  const ring = rings.find(({ least }) => room >= least);
  if (!ring) return [];
  const high = (count: number) => ring.radius + (count * line) / 2;
  // A block of words lies in the circle of the room there.
  const fits = (count: number) =>
    words.lines
      .slice(0, count)
      .every((one) => Math.hypot(textWidth(one, sizes.note) / 2, high(count)) < room - 1);
  const shown = words.lines.filter((_, i) => fits(i + 1));
  const centre: Spot = [at[0], at[1] + (shown.length * line) / 2];
  return [
    circle(centre, ring.radius, { line: 'box' }),
    text(centre, words.number, { size: ring.size, weight: 700, clear: 'none' }),
    ...shown.map((one, i) =>
      text([at[0], centre[1] - ring.radius - line * (i + 0.6)], one, { clear: 'none' }),
    ),
  ];
}

/**
 * A page of a template, at full size and exact: nothing is rounded to the saw. Factory edges lie heavy on the piece, sawn
 * edges light, waste is crossed out; what a page shares with the next bears crosses with letters.
 */
export function drawTemplate(
  plan: TemplatePlan,
  page: number,
  words: TemplateWords,
  options: DrawOptions,
): Drawing {
  const window = plan.grid.windows[page]!;
  const marks = [
    ...templateMarks(plan, window),
    ...registerMarks(plan.grid, page),
    ...wordMarks(plan, ownWindow(plan.grid, page), words),
  ];
  return penSvg(moveMarks(marks, [-window.left, -window.bottom]), {
    id: options.id,
    label: options.label,
    widthMm: window.right - window.left,
    heightMm: window.top - window.bottom,
    ratio: 1,
  });
}
