import { isHard } from '../cuts/isHard.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import type { Zone } from '../zones/Zone.ts';
import { printedSpace } from './printedSpace.ts';
import { type RowRange, rowRanges } from './rowRanges.ts';
import type { SheetContext } from './SheetContext.ts';
import { shortEdge } from './shortEdge.ts';

/** A space to measure on the floor: in which rows, at which edge, what it should be, and the cuts that take up a difference. */
export interface FoundLine {
  readonly rows: string;
  readonly edge: string;
  readonly space: string;
  readonly cuts: readonly number[];
  /** Whether one of them has a card, on which sizes of what is cut away stand too. */
  readonly onCard: boolean;
  /** How many lines of circles the numbers take. */
  readonly deep: number;
}

/** The column of cut numbers, a circle at least, what a figure adds to its ring, and the space after a circle, in mm. */
const MM = { column: 18, circle: 7, figure: 2.5, ring: 2, space: 1.2 } as const;

/** Lines of circles that stand side by side as far as their column goes. */
function linesOf(cuts: readonly number[]): number {
  let [lines, left] = [1, MM.column as number];
  for (const cut of cuts) {
    const wide = Math.max(MM.circle, MM.figure * String(cut).length + MM.ring);
    if (wide > left) [lines, left] = [lines + 1, MM.column];
    left -= wide + MM.space;
  }
  return lines;
}

/**
 * Where the rows of a zone end at a wall or another straight face: the space that should be left from the last whole tile, wall
 * by wall. Rows of one direction with the same space at the same edge are one line; round things are measured by their own cuts.
 */
export function foundLines(
  { packet, say, length }: SheetContext,
  surface: PacketSurface,
  zone: Zone,
): FoundLine[] {
  const round = new Set(surface.obstacles.filter(({ circle }) => circle).map(({ name }) => name));
  const axisOf = new Map(surface.rows.map(({ id, axis }) => [id, axis]));
  const alike = new Map<string, { edge: string; space: string; rows: string[]; cuts: Set<number> }>();
  for (const found of zone.found) {
    const { row, edge = '', cuts } = found;
    if (round.has(edge)) continue;
    const name = shortEdge(surface, edge, say);
    const space = length(printedSpace(surface, found, packet.rounding.step));
    const key = `${name}|${space}|${axisOf.get(row) ?? ''}`;
    const line = alike.get(key) ?? { edge: name, space, rows: [], cuts: new Set() };
    line.rows.push(row);
    for (const cut of cuts) line.cuts.add(cut);
    alike.set(key, line);
  }
  const hard = new Set(surface.cuts.filter(isHard).map(({ number }) => number));
  const lines = [...alike.values()];
  const edges = [...new Set(lines.map(({ edge }) => edge))];
  return edges.flatMap((wall) => {
    const beside = lines.filter(({ edge }) => edge === wall);
    return beside.map(({ edge, space, rows, cuts }) => {
      const inOrder = [...cuts].sort((a, b) => a - b);
      const told = rowRanges([...new Set(rows)])
        .map((range) => rowsSaid(say, range))
        .join(', ');
      const onCard = inOrder.some((cut) => hard.has(cut));
      return { rows: told, edge, space, cuts: inOrder, onCard, deep: linesOf(inOrder) };
    });
  });
}

/** What the words over found spaces need to know of them. */
export function foundFigures(found: readonly Pick<FoundLine, 'onCard'>[]): { readonly cards: 'yes' | 'no' } {
  return { cards: found.some(({ onCard }) => onCard) ? 'yes' : 'no' };
}

/** One row by its name, several by the first and the last, with the step where not every row between them is meant. */
function rowsSaid(say: SheetContext['say'], { first, last, step }: RowRange): string {
  if (first === last) return first;
  return step === 1 ? `${first} … ${last}` : say('sheet.zone.everyOf', { first, last, step });
}
