import type { Space } from '../drawing/index.ts';

const PAPER_MM = { letter: [215.9, 279.4], a4: [210, 297] } as const;

/** Margins of every sheet: 20 mm on the binding side, 12 on the other; 26 above, which holds the head, and 16 below with the foot. */
const ACROSS_MM = 20 + 12;
const DOWN_MM = 26 + 16;

/** Room for a drawing on a page, in mm of paper, given which share of its height the drawing may take. */
export function drawingSpace(paper: 'letter' | 'a4', way: 'portrait' | 'landscape', share = 1): Space {
  const [short, long] = PAPER_MM[paper];
  const [width, height] = way === 'portrait' ? [short, long] : [long, short];
  return { widthMm: width - ACROSS_MM, heightMm: Math.floor((height - DOWN_MM) * share) };
}

/** Space for a drawing that may choose the way of its page, with `belowMm` left free for what stands under it. */
export function bothSpaces(paper: 'letter' | 'a4', belowMm: number): Record<'portrait' | 'landscape', Space> {
  const less = (space: Space): Space => ({ ...space, heightMm: space.heightMm - belowMm });
  return { portrait: less(drawingSpace(paper, 'portrait')), landscape: less(drawingSpace(paper, 'landscape')) };
}
