import { type Box, boxOf, grow } from '../boxes.ts';
import type { LineName } from '../lineStyles.ts';
import type { Mark, Spot } from '../Mark.ts';
import { mmPerTick } from '../Scale.ts';
import { angleTo, cross, move } from '../signs.ts';
import { path } from '../text.ts';
import { clipSegment } from './clipSegment.ts';
import { deepest } from './deepest.ts';
import type { TemplatePlan } from './TemplatePlan.ts';

const perTick = mmPerTick(1);
/** Half the width of a heavy line: it lies on the piece, so that its outer side is the edge. */
const half = 0.5;
/** Radius of the hole that is drilled in an inner corner, and arms of the cross in a circle's middle, in mm. */
const drill = 1.5;
const arm = 4;
/** An X of the waste: the share of the room it takes, the longest arm, and the least room in mm. */
const waste = { share: 0.6, longest: 25, least: 4 };

const spot = ([x, y]: readonly [number, number]): Spot => [x * perTick, y * perTick];

/** A line as far as it lies in a box. */
export function clipped(a: Spot, b: Spot, box: Box, line: LineName): readonly Mark[] {
  const part = clipSegment(a, b, box);
  return part ? [path(part, line)] : [];
}

/** Edges as far as a box shows them: each exactly; factory edges heavy on the piece's side; sawn edges light. */
function edgeMarks({ laid }: TemplatePlan, box: Box): readonly Mark[] {
  return laid.edges.flatMap(({ from, to, factory }) => {
    const [a, b] = [spot(from), spot(to)];
    const exact = clipped(a, b, box, 'exact');
    if (!factory) return [...exact, ...clipped(a, b, box, 'sawn')];
    const angle = angleTo(a, b);
    const inward = angle + Math.PI / 2;
    if (Math.hypot(b[0] - a[0], b[1] - a[1]) <= 2 * half) return exact;
    const ends = [
      move(move(a, inward, half), angle, half),
      move(move(b, inward, half), angle, -half),
    ] as const;
    return [...exact, ...clipped(...ends, box, 'factory')];
  });
}

/** Sides of the whole tile, dashed, where the piece does not reach. */
function tileMarks({ laid }: TemplatePlan, box: Box): readonly Mark[] {
  return laid.tile.flatMap((from, i) =>
    clipped(spot(from), spot(laid.tile[(i + 1) % laid.tile.length]!), box, 'fullTile'),
  );
}

/** Drill here first: a hole in the waste that touches both edges of an inner corner. */
function drillMarks({ laid }: TemplatePlan, box: Box): readonly Mark[] {
  return laid.inner.flatMap(({ at, ways }): readonly Mark[] => {
    const [one, other] = ways.map((way) => angleTo(spot(at), spot(way))) as [number, number];
    const [x, y] = [Math.cos(one) + Math.cos(other), Math.sin(one) + Math.sin(other)];
    const size = Math.hypot(x, y);
    if (size < 0.2) return [];
    const spread = Math.sqrt(Math.max(0.05, 1 - (size / 2) ** 2));
    const centre = move(spot(at), Math.atan2(y, x), drill / spread);
    const seen = clipSegment(centre, [centre[0] + 0.01, centre[1]], grow(box, -2));
    return seen ? [{ mark: 'circle', centre, radius: drill, line: 'thin' }] : [];
  });
}

/** A cross in the middle of each true circle. */
function centreMarks({ laid }: TemplatePlan, box: Box): readonly Mark[] {
  return laid.centres.flatMap((centre) => {
    const [x, y] = spot(centre);
    return [
      ...clipped([x - arm, y], [x + arm, y], box, 'dimension'),
      ...clipped([x, y - arm], [x, y + arm], box, 'dimension'),
    ];
  });
}

function wasteMarks({ laid }: TemplatePlan, box: Box): readonly Mark[] {
  return deepest(laid.waste, box)
    .filter(({ room }) => room >= waste.least)
    .flatMap(({ at, room }) => cross(at, Math.min(waste.longest, room * waste.share)));
}

/** A line with a zigzag in its middle where the piece goes on. */
function breakMarks({ part, broken }: TemplatePlan, box: Box): readonly Mark[] {
  return broken.flatMap((side) => {
    const level = side === 'bottom' || side === 'top';
    const [from, to] = level ? [part.left, part.right] : [part.bottom, part.top];
    const middle = (from + to) / 2;
    const steps = [
      [from, 0],
      [middle - 4, 0],
      [middle - 2, 2.5],
      [middle + 2, -2.5],
      [middle + 4, 0],
      [to, 0], // biome-ignore format: a zigzag on a line
    ] as const;
    const spots = steps.map(
      ([along, off]): Spot => (level ? [along, part[side] + off] : [part[side] + off, along]),
    );
    return spots.slice(1).flatMap((b, i) => clipped(spots[i]!, b, box, 'register'));
  });
}

/** All of a template that one page shows, but its words. */
export function templateMarks(plan: TemplatePlan, window: Box): readonly Mark[] {
  // The piece ends at a break line, and has white round it elsewhere.
  const held = {
    ...grow(plan.part, 10),
    ...Object.fromEntries(plan.broken.map((side) => [side, plan.part[side]])),
  };
  const box = commonBox(held, window);
  return [
    ...tileMarks(plan, box),
    ...edgeMarks(plan, box),
    ...drillMarks(plan, box),
    ...centreMarks(plan, box),
    ...wasteMarks(plan, box),
    ...breakMarks(plan, window),
  ];
}

function commonBox(a: Box, b: Box): Box {
  const [left, bottom] = [Math.max(a.left, b.left), Math.max(a.bottom, b.bottom)];
  return boxOf([[left, bottom], [Math.min(a.right, b.right), Math.min(a.top, b.top)]]); // biome-ignore format: two corners
}
