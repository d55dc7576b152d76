import { textWidth } from '../drawing/index.ts';
import { type FoundLine, foundFigures } from './foundLines.ts';
import type { SheetContext } from './SheetContext.ts';
import { wordLines } from './wordLines.ts';

/** A line of the words over the found spaces with what stands round them, the heads of the columns, a line, a line of circles and what stands round it, in mm. */
const MM = { head: 4.6, round: 2, keys: 6.2, line: 8.2, circles: 7.7, roundCircles: 1 } as const;
/** Two columns, what lies between them, and what a line holds besides its name, in mm. */
const BESIDE = { between: 6, figures: 59.5 } as const;
/** Type of the words over them, of a row's name and of its edge, in points; heights of a line of the two, and what stands round them, in mm. */
const POINTS = { head: 10, row: 10, edge: 9 } as const;
const NAME_MM = { row: 3.4, edge: 3.1, round: 1.2 } as const;
/** Type is printed a little wider than it is set. */
const WIDER = 1.03;
/** What stays free on a page, in mm. */
const SLACK_MM = 1.5;
/** A page begins with so many lines at least under what stands there before. */
const FEWEST = 3;

/** Lines side by side: the higher gives the height of both. */
type Pair = readonly FoundLine[];

const pairsOf = (found: readonly FoundLine[]): readonly Pair[] =>
  found.flatMap((_, i) => (i % 2 === 0 ? [found.slice(i, i + 2)] : []));

/** The name of what stands at the edge goes under its rows where both do not fit side by side. */
function nameMm({ rows, edge }: FoundLine, wide: number): number {
  const row = textWidth(`${rows} `, POINTS.row) * WIDER;
  if (row + textWidth(edge, POINTS.edge) * WIDER <= wide) return NAME_MM.row + NAME_MM.round;
  const rowLines = wordLines(rows, POINTS.row * WIDER, wide);
  const edgeLines = wordLines(edge, POINTS.edge * WIDER, wide);
  return rowLines * NAME_MM.row + edgeLines * NAME_MM.edge + NAME_MM.round;
}

function pairMm(pair: Pair, widthMm: number): number {
  const wide = (widthMm - BESIDE.between) / 2 - BESIDE.figures;
  const high = pair.map((line) =>
    Math.max(nameMm(line, wide), line.deep > 1 ? line.deep * MM.circles + MM.roundCircles : 0),
  );
  return Math.max(MM.line, ...high);
}

/** The words over the found spaces, in both languages of the crew, and the heads of their columns. */
function headsMm(
  { say, second }: SheetContext,
  found: readonly FoundLine[],
  widthMm: number,
): { readonly words: number; readonly keys: number } {
  const figures = foundFigures(found);
  const words = [say, ...(second ? [second.say] : [])]
    .map((tell) => tell('sheet.zone.expected', figures))
    .join('');
  const lines = Math.ceil((textWidth(words, POINTS.head) * 1.1) / widthMm);
  return { words: lines * MM.head + MM.round, keys: MM.keys };
}

const sumMm = (pairs: readonly Pair[], widthMm: number): number =>
  pairs.reduce((sum, pair) => sum + pairMm(pair, widthMm), 0);

/** How high found spaces stand together under their heads, in mm of a page so wide; 0 where there are none. */
export function foundMm(context: SheetContext, found: readonly FoundLine[], widthMm: number): number {
  if (found.length === 0) return 0;
  const { words, keys } = headsMm(context, found, widthMm);
  return words + keys + sumMm(pairsOf(found), widthMm);
}

/** A page for found spaces, in mm, and how much of the first one is taken by what stands there before. */
export interface FoundRoom {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly takenMm: number;
}

/**
 * Found spaces in the parts that a page holds under its heads, as few as may be and about as high as each other, so that none is left with
 * a line or two. The first part is empty where what stands on its page leaves it no room.
 */
export function foundPages(
  context: SheetContext,
  found: readonly FoundLine[],
  { widthMm, heightMm, takenMm }: FoundRoom,
): readonly (readonly FoundLine[])[] {
  const { words, keys } = headsMm(context, found, widthMm);
  const pairs = pairsOf(found);
  const rooms = (i: number) => heightMm - SLACK_MM - words - keys - (i === 0 ? takenMm : 0);
  const total = sumMm(pairs, widthMm);
  const first = rooms(0) < Math.min(total, FEWEST * MM.line) ? 1 : 0;
  for (let count = first + 1; count <= first + pairs.length; count += 1) {
    const parts = evenly(pairs, count, { first, rooms, widthMm });
    if (parts) return parts.map((part) => part.flat());
  }
  return [found];
}

interface Spread {
  readonly first: number;
  readonly rooms: (page: number) => number;
  readonly widthMm: number;
}

/** Pairs on so many pages, each filled to about the same level; undefined where the last one would not hold what is left. */
function evenly(
  pairs: readonly Pair[],
  count: number,
  { first, rooms, widthMm }: Spread,
): readonly Pair[][] | undefined {
  const total = sumMm(pairs, widthMm);
  const own = (page: number) => Math.min(rooms(page), total / (count - first));
  // What the first page can't take of its even share goes to the others.
  const share = (total - own(first)) / Math.max(1, count - first - 1);
  const parts: Pair[][] = [...Array.from({ length: first }, () => []), []];
  let high = 0;
  for (const pair of pairs) {
    const page = parts.length - 1;
    const mm = pairMm(pair, widthMm);
    const level = page === count - 1 ? rooms(page) : (page === first ? own(page) : share) + mm / 2;
    if (high > 0 && high + mm > Math.min(level, rooms(page))) {
      if (page === count - 1) return undefined;
      [parts[page + 1], high] = [[], 0];
    }
    parts.at(-1)!.push(pair);
    high += mm;
  }
  return parts;
}
