import type { Space } from '../drawing/index.ts';

const PAPER_MM = { letter: [215.9, 279.4], a4: [210, 297] } as const;

/** Margins of every sheet: 20 mm on the binding side, 12 on the other; 26 above, which holds the head, and 16 below with the foot. */
const ACROSS_MM = 20 + 12;
const DOWN_MM = 26 + 16;

/** What the check bars take of a page that is drawn to scale: one stands left of the drawing, one lies under it. */
const BARS_MM = { across: 9, down: 9 };

/** Room for what a page holds, in mm of paper. */
export function pageSpace(paper: 'letter' | 'a4', way: 'portrait' | 'landscape'): Space {
  const [short, long] = PAPER_MM[paper];
  const [width, height] = way === 'portrait' ? [short, long] : [long, short];
  return { widthMm: width - ACROSS_MM, heightMm: height - DOWN_MM };
}

/** Room for a drawing to scale beside its check bars, with `belowMm` left free for what stands under it. */
export function drawingSpace(paper: 'letter' | 'a4', way: 'portrait' | 'landscape', belowMm: number): Space {
  const { widthMm, heightMm } = pageSpace(paper, way);
  return {
    widthMm: Math.floor(widthMm - BARS_MM.across),
    heightMm: Math.floor(heightMm - BARS_MM.down - belowMm),
  };
}

/** Space for a drawing that may choose the way of its page. */
export function bothSpaces(paper: 'letter' | 'a4', belowMm: number): Record<'portrait' | 'landscape', Space> {
  return {
    portrait: drawingSpace(paper, 'portrait', belowMm),
    landscape: drawingSpace(paper, 'landscape', belowMm),
  };
}
