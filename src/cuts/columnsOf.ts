import { bounds } from '../geometry/index.ts';
import type { Layout, Piece } from '../layout/Layout.ts';
import type { Course } from './Course.ts';

/** Rounding moves an end of a tile by so few ticks. */
const ROUNDING = 2;

/**
 * Lines across the courses of a running bond, one for each tile of the course over the chalk line, where they meet the joints of no course: what a
 * wall along the courses leaves of the last one is told by them. None where wide soft joints pull the courses apart.
 *
 * @param nameOf name of a line by its place from the crossing: the tile right of it is 0, the one left of it -1.
 */
export function columnsOf(layout: Layout, nameOf: (place: number) => string): Course[] {
  const { pattern, pieces, chalk, wide = [] } = layout;
  const field = pieces.filter((piece) => !piece.border);
  const first = field.find(({ id }) => /^[KL]\d+-1b?$/.test(id)) ?? field[0];
  if (!first || wide.length > 0) return [];
  const module = pattern.module[0];
  const boxes = field.map((piece) => ({ piece, ...bounds(piece.fullTile) }));
  const from = bounds(first.fullTile).minX;
  const into = clearOf(
    boxes.map(({ minX }) => minX - from),
    module,
  );
  const place = (x: number) => Math.floor((x - from) / module);
  const [low, high] = [
    Math.min(...boxes.map(({ minX }) => minX)),
    Math.max(...boxes.map(({ maxX }) => maxX)),
  ];
  const crossing = Math.round((chalk.crossing[0] - from) / module);
  const all: Course[] = [];
  for (let k = place(low); k <= place(high); k += 1) {
    const level = Math.floor(from + k * module + into) + 0.5;
    const own: Piece[] = boxes
      .filter(({ minX, maxX }) => minX < level && level < maxX)
      .map(({ piece }) => piece);
    if (own.length > 0) all.push({ axis: 'across', name: nameOf(k - crossing), level, pieces: own });
  }
  return all;
}

/** How far into a module lies the middle of the widest part that no course begins in. */
function clearOf(starts: readonly number[], module: number): number {
  const phases = starts.map((start) => ((start % module) + module) % module).sort((a, b) => a - b);
  const own = phases.filter((phase, i) => i === 0 || phase - phases[i - 1]! > ROUNDING);
  const spans = own.map((phase, i) => ({ phase, wide: (own[i + 1] ?? own[0]! + module) - phase }));
  const widest = spans.reduce((best, one) => (one.wide > best.wide + ROUNDING ? one : best));
  return (widest.phase + widest.wide / 2) % module;
}
