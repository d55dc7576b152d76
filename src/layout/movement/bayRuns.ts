import { bounds, intersect, type Ring, rotate, type Shape } from '../../geometry/index.ts';
import type { Ticks } from '../../measure/index.ts';
import type { Layout } from '../Layout.ts';
import type { MovementLine } from './Movement.ts';

/** Longest extent of any of these shapes along and square to the room's first wall, in ticks; `turn` in radians brings them back to the room. */
export function longestRuns(shapes: readonly Shape[], turn: number): readonly [Ticks, Ticks] {
  const boxes = shapes.map(({ outer }) => bounds(outer.map((point) => rotate(point, turn))));
  return [
    Math.round(Math.max(0, ...boxes.map(({ minX, maxX }) => maxX - minX))),
    Math.round(Math.max(0, ...boxes.map(({ minY, maxY }) => maxY - minY))),
  ];
}

/** Longest extents of the bays into which soft joints part a field, along and square to the room's first wall, in ticks. */
export function bayRuns(
  { field, turn }: Pick<Layout, 'field' | 'turn'>,
  lines: readonly Pick<MovementLine, 'axis' | 'at'>[],
): readonly [Ticks, Ticks] {
  const box = bounds(field.map(({ outer }) => outer));
  const along = cellsOn(lines, 'along', box.minX, box.maxX);
  const across = cellsOn(lines, 'across', box.minY, box.maxY);
  const bays = along.flatMap(([left, right]) =>
    across.flatMap(([low, high]) => {
      const cell: Ring = [
        [left, low],
        [right, low],
        [right, high],
        [left, high],
      ];
      return intersect(field, [{ outer: cell, holes: [] }]);
    }),
  );
  return longestRuns(bays, turn);
}

function cellsOn(
  lines: readonly Pick<MovementLine, 'axis' | 'at'>[],
  axis: MovementLine['axis'],
  low: Ticks,
  high: Ticks,
): readonly (readonly [Ticks, Ticks])[] {
  const places = lines.flatMap((line) => (line.axis === axis ? [Math.round(line.at)] : []));
  const ends = [Math.floor(low), ...places.sort((a, b) => a - b), Math.ceil(high)];
  return ends.slice(1).map((end, i) => [ends[i]!, end]);
}
