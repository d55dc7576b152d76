import { describe, expect, test } from 'vitest';
import type { Point, Shape } from '../../src/geometry/index.ts';
import type { CarriedJoint } from '../../src/layout/carriedJoints.ts';
import { carriedRuns } from '../../src/materials/carriedRuns.ts';
import type { PlacedBase } from '../../src/room/PlacedBase.ts';

/** An L: 100 by 60, less a corner of 40 by 30. Each turn is a way to look at the same floor. */
const L: readonly Point[] = [
  [0, 0],
  [100, 0],
  [100, 30],
  [60, 30],
  [60, 60],
  [0, 60],
];
const LOOKS: Readonly<Record<string, (point: Point) => Point>> = {
  'as it is': (point) => point,
  turned: ([x, y]) => [-y, x],
  mirrored: ([x, y]) => [-x, y],
};

const layoutOf = (look: (point: Point) => Point, movement?: object) => {
  const field: readonly Shape[] = [{ outer: L.map(look), holes: [] }];
  return { field, pattern: { joint: 3 }, chalk: { crossing: [0, 0] }, movement } as unknown as Parameters<
    typeof carriedRuns
  >[0];
};
const baseOf = (look: (point: Point) => Point, ...line: Point[]): PlacedBase => ({
  cracks: [],
  hollow: [],
  joints: [{ wall: 'A-B', distance: 0, from: look(line[0]!), to: look(line[1]!) }],
  readings: [],
});
const NONE: CarriedJoint = { number: 1, kind: 'none' };

describe.each(Object.entries(LOOKS))('what runs over a joint of the base, the floor %s', (name, look) => {
  test('is as long as the joint under the field, whatever lies beyond', () => {
    const [run] = carriedRuns(layoutOf(look), baseOf(look, [-20, 45], [140, 45]), [NONE]);
    expect(run).toEqual({ isOver: false, width: 3, length: 60 });
  });

  test('ends where the joint of the base ends', () => {
    const [run] = carriedRuns(layoutOf(look), baseOf(look, [10, 10], [40, 50]), [NONE]);
    expect(run!.length).toBeCloseTo(50, 9);
  });

  test('is the tile joint from edge to edge where one lies over it', () => {
    const place = look([0, 45]);
    const isUpright = name === 'turned';
    const over: CarriedJoint = {
      number: 1,
      kind: 'over',
      axis: isUpright ? 'along' : 'across',
      distance: isUpright ? place[0] : place[1],
    };
    const base = baseOf(look, [10, 45], [20, 45]);
    expect(carriedRuns(layoutOf(look), base, [over])).toEqual([{ isOver: true, width: 3, length: 60 }]);
    const line = { axis: over.axis, at: over.distance };
    expect(carriedRuns(layoutOf(look, { lines: [line] }), base, [over])).toEqual([]);
  });
});
