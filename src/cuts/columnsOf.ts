import { bounds } from '../geometry/index.ts';
import type { Layout, Piece } from '../layout/Layout.ts';
import type { Course } from './Course.ts';

/** Rounding moves an end of a tile by so few ticks. */
const ROUNDING = 2;

/** A piece of the field with how far its tile reaches. */
type Boxed = ReturnType<typeof bounds> & { readonly piece: Piece };

/**
 * Lines across the courses of a running bond, one for each tile of a course, where they meet the joints of no course: what a
 * wall along the courses leaves of the last one is told by them. Of lines that are as clear of joints they are those whose pieces have one number.
 * None where wide soft joints pull the courses apart.
 *
 * @param nameOf name of a line by the column of its pieces: the one right of the crossing is 0, the one left of it -1.
 */
export function columnsOf(layout: Layout, nameOf: (place: number) => string): Course[] {
  const { pattern, pieces, wide = [] } = layout;
  const field = pieces.filter((piece) => !piece.border);
  const first = field.find(({ id }) => /^[KL]\d+-1b?$/.test(id)) ?? field[0];
  if (!first || wide.length > 0) return [];
  const module = pattern.module[0];
  const boxes = field.map((piece) => ({ piece, ...bounds(piece.fullTile) }));
  const from = bounds(first.fullTile).minX;
  const starts = boxes.map(({ minX }) => minX - from);
  return clearOf(starts, module)
    .map((into) => linesFrom(boxes, from + into, module))
    .reduce((best, one) => (one.agree > best.agree ? one : best))
    .lines.map(({ place, level, own }) => ({ axis: 'across', name: nameOf(place), level, pieces: own }));
}

/** Lines a module apart, each with the column that most pieces have from line to line, and how many pieces are of their line's column. */
function linesFrom(boxes: readonly Boxed[], from: number, module: number) {
  const low = Math.min(...boxes.map(({ minX }) => minX));
  const high = Math.max(...boxes.map(({ maxX }) => maxX));
  const begin = Math.floor((low - from) / module);
  const all = Array.from({ length: Math.ceil((high - low) / module) + 2 }, (_, i) => {
    const level = Math.floor(from + (begin + i) * module) + 0.5;
    const own = boxes.filter(({ minX, maxX }) => minX < level && level < maxX).map(({ piece }) => piece);
    return { i, level, own };
  }).filter(({ own }) => own.length > 0);
  const counts = new Map<number, number>();
  for (const by of all.flatMap(({ i, own }) => own.map(({ column }) => column - i)))
    counts.set(by, (counts.get(by) ?? 0) + 1);
  const [by, agree] = [...counts].reduce((best, one) => (one[1] > best[1] ? one : best));
  return { agree, lines: all.map(({ i, level, own }) => ({ place: i + by, level, own })) };
}

/** How far into a module lie the middles of the widest parts that no course begins in. */
function clearOf(starts: readonly number[], module: number): readonly number[] {
  const phases = starts.map((start) => ((start % module) + module) % module).sort((a, b) => a - b);
  const own = phases.filter((phase, i) => i === 0 || phase - phases[i - 1]! > ROUNDING);
  const spans = own.map((phase, i) => ({ phase, wide: (own[i + 1] ?? own[0]! + module) - phase }));
  const widest = Math.max(...spans.map(({ wide }) => wide));
  return spans
    .filter(({ wide }) => wide >= widest - ROUNDING)
    .map(({ phase, wide }) => (phase + wide / 2) % module);
}
