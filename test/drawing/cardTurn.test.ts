import { describe, expect, test } from 'vitest';
import { edgeMarks } from '../../src/drawing/cardMarks.ts';
import { cardTurn } from '../../src/drawing/cardTurn.ts';
import { inRings } from '../../src/drawing/inRings.ts';
import type { Spot } from '../../src/drawing/Mark.ts';
import { direction, scaleFor, toPaper } from '../../src/drawing/Scale.ts';
import { circleOf } from '../../src/drawing/trueCircle.ts';
import type { Point, Ring } from '../../src/geometry/index.ts';
import { demos } from '../sheets/demos.ts';

const hard = demos.flatMap(({ slug, packet }) =>
  packet.surfaces.flatMap((surface) =>
    surface.cuts.filter((cut) => cut.hard).map((cut) => ({ slug, number: cut.number, cut, surface })),
  ),
);
const asPlan = hard.filter(({ cut, surface }) => cardTurn(cut, surface).asPlan);

/** A ring turned, its lower left corner at the origin, its points in an order that does not tell where it begins. */
function laid(ring: Ring, degrees: number, about: Ring = ring): Point[] {
  const [cos, sin] = direction(degrees);
  const turn = (points: Ring) => points.map(([x, y]): Point => [x * cos - y * sin, x * sin + y * cos]);
  const all = turn(about);
  const [left, bottom] = [0, 1].map((axis) => Math.min(...all.map((point) => point[axis]!))) as [
    number,
    number,
  ];
  return turn(ring).map(([x, y]) => [x - left, y - bottom]);
}

const middle = ([a, b]: readonly Spot[]): Spot => [(a![0] + b![0]) / 2, (a![1] + b![1]) / 2];

describe('a piece that no wall cuts', () => {
  test('stands in the demos: those round a flange', () => expect(asPlan.length).toBeGreaterThan(3));

  test.each(asPlan.filter(({ surface }) => surface.turn % 90 === 0))(
    'lies on its card as on the plan: $slug cut $number',
    ({ cut, surface }) => {
      const piece = surface.pieces.find(({ id }) => id === cut.pieces[0])!;
      const plan = laid(piece.shape.outer, surface.turn);
      const card = laid(cut.shape.outer, cardTurn(cut, surface).turn);
      // Each corner of one is found on the other, to what rounding moves it.
      for (const [x, y] of plan) expect(card.some(([u, v]) => Math.hypot(u - x, v - y) <= 16)).toBe(true);
    },
  );
});

describe('a piece that a wall cuts', () => {
  const walled = hard.filter(({ cut, surface }) => !cardTurn(cut, surface).asPlan);

  test.each(walled)(
    'has a side that a wall cuts at the foot of its card: $slug cut $number',
    ({ cut, surface }) => {
      const { turn } = cardTurn(cut, surface);
      const low = Math.min(...laid(cut.shape.outer, turn).map(([, y]) => y));
      const sawn = cut.edges.filter(({ factory }) => !factory);
      const ends = sawn.map(({ from, to }) => laid([from, to], turn, cut.shape.outer));
      // Along a wall that leans or bends the lower end lies at the foot.
      expect(ends.some((both) => both.some(([, y]) => y - low <= 64))).toBe(true);
    },
  );
});

describe('the hatch of a card', () => {
  const scale = { ...scaleFor([[0, 0], [96000, 0], [96000, 96000], [0, 96000]], 0, 8, [0, 0]) }; // biome-ignore format: corners on a line

  test.each(hard)('is beside each sawn edge, outside the piece: $slug cut $number', ({ cut }) => {
    const strokes = edgeMarks(cut, scale).filter((mark) => mark.mark === 'path' && mark.line === 'slash');
    const straight = cut.edges.filter((edge) => !edge.factory && !circleOf(edge.from, edge.to, cut.circles));
    expect(strokes.length).toBeGreaterThanOrEqual(straight.length);
    const piece = [cut.shape.outer, ...cut.shape.holes].map((ring) =>
      ring.map((point) => toPaper(scale, point)),
    );
    const inside = strokes.filter(
      (mark) => mark.mark === 'path' && inRings(middle(mark.steps as Spot[]), piece),
    );
    expect(inside).toEqual([]);
  });
});
