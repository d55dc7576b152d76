import { bounds, intersect, type Ring, rotate, type Shape } from '../../geometry/index.ts';
import type { Ticks } from '../../measure/index.ts';
import type { Layout } from '../Layout.ts';
import type { MovementLine } from './Movement.ts';
import { pulledApart } from './pulledApart.ts';
import type { WideJoint } from './WideJoint.ts';

/** Longest extent of any of these shapes along and square to the room's first wall, in ticks; `turn` in radians brings them back to the room. */
export function longestRuns(shapes: readonly Shape[], turn: number): readonly [Ticks, Ticks] {
  const boxes = shapes.map(({ outer }) => bounds(outer.map((point) => rotate(point, turn))));
  return [
    Math.round(Math.max(0, ...boxes.map(({ minX, maxX }) => maxX - minX))),
    Math.round(Math.max(0, ...boxes.map(({ minY, maxY }) => maxY - minY))),
  ];
}

/**
 * Longest extents of the bays into which soft joints part a field, along and square to the room's first wall, in ticks: from the
 * middle of one to the middle of the next, less what they are wider than the grout joint.
 */
export function bayRuns(
  { field, turn, wide = [] }: Pick<Layout, 'field' | 'turn' | 'wide'>,
  lines: readonly Pick<MovementLine, 'axis' | 'at'>[],
): readonly [Ticks, Ticks] {
  const box = bounds(field.map(({ outer }) => outer));
  const along = cellsOn(lines, wide, 'along', box.minX, box.maxX);
  const across = cellsOn(lines, wide, 'across', box.minY, box.maxY);
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
  wide: readonly WideJoint[],
  name: MovementLine['axis'],
  low: Ticks,
  high: Ticks,
): readonly (readonly [Ticks, Ticks])[] {
  const axis = name === 'along' ? 0 : 1;
  const strips = lines
    .filter((line) => line.axis === name)
    .map((line) => {
      const at = Math.round(line.at);
      const extra =
        wide.find((one) => one.axis === axis && pulledApart(wide, axis, one.at) === at)?.extra ?? 0;
      return [at - Math.floor(extra / 2), at + Math.ceil(extra / 2)] as const;
    })
    .sort(([a], [b]) => a - b);
  const ends = [Math.floor(low), ...strips.flat(), Math.ceil(high)];
  return ends.flatMap((from, i) => (i % 2 === 0 ? [[from, ends[i + 1]!] as const] : []));
}
