import type { Point } from '../geometry/index.ts';
import type { Print } from '../job/Job.ts';
import type { Layout } from '../layout/Layout.ts';
import { TICKS_PER_64TH, TICKS_PER_MM } from '../measure/index.ts';
import type { Course } from './Course.ts';
import type { Row } from './Cut.ts';
import { coursesOf } from './coursesOf.ts';
import { freeSpans } from './freeSpans.ts';
import { type ExactTerm, rowTerms } from './rowTerms.ts';
import { sawTerms } from './sawTerms.ts';

/**
 * One straight line through the middle of each course, wall to wall or wall to obstacle: gaps, pieces and joints. Their exact
 * and their saw values each add up to the line's length, in ticks.
 */
export function makeRows(layout: Layout, print: Pick<Print, 'step' | 'system'>): Row[] {
  const grid = print.system === 'mm' ? TICKS_PER_MM / 10 : TICKS_PER_64TH;
  return coursesOf(layout).flatMap((course) =>
    rowsOf(layout, course).map((row) => ({ ...row, terms: sawTerms(row.terms, print.step, grid) })),
  );
}

function rowsOf(layout: Layout, course: Course): (Omit<Row, 'terms'> & { terms: ExactTerm[] })[] {
  const { axis, level, name } = course;
  const along = axis === 'along' ? 0 : 1;
  const spans = freeSpans(layout.frame, along, level)
    .map((span) => ({ span, terms: rowTerms(layout, course, span) }))
    .filter(({ terms }) => terms.some(({ what }) => what === 'piece'));
  return spans.map(({ span, terms }, i) => ({
    id: spans.length > 1 ? `${name}${'abcdefghijklmnopqrstuvwxyz'[i] ?? i}` : name,
    axis,
    from: pointAt(span.from, level, along),
    to: pointAt(span.to, level, along),
    edges: span.edges,
    terms,
  }));
}

function pointAt(place: number, level: number, along: 0 | 1): Point {
  const line = Math.floor(level);
  return along === 0 ? [place, line] : [line, place];
}
