import type { Point } from '../../../geometry/index.ts';
import type { Ticks } from '../../../measure/index.ts';
import type { Candidate } from '../../Layout.ts';
import { stretchOf } from '../stretchOf.ts';
import type { AlternativeQuestion } from './AlternativeQuestion.ts';
import { moved } from './moved.ts';
import { type FloorOpening, smallOpenings, touchedBy } from './Opening.ts';

/** Openings considered at most: more of them cannot all be served by one move. */
const MOST = 4;

/** How hard all openings are to cut: tiles touched, and whether any web is too thin. */
interface Trouble {
  readonly tiles: number;
  readonly work: number;
  readonly thinWebs: number;
}

/**
 * The shortest move after which pipes, flanges and posts touch the fewest tiles and leave no thin web. A
 * hole inside a tile counts as two: it is as much work as two plain cuts at a joint.
 */
export function simplified(question: AlternativeQuestion): Candidate[] {
  const { ground, pattern, chosen } = question;
  const openings = smallOpenings(ground, pattern).slice(0, MOST);
  if (openings.length === 0) return [];
  const { origin } = chosen.choice;
  const trouble = (by: Point) => troubleOf(openings, question, [origin[0] + by[0], origin[1] + by[1]]);
  const before = trouble([0, 0]);
  const moves = movesOn(0, openings, question).flatMap((x) =>
    movesOn(1, openings, question).map((y): Point => [x, y]),
  );
  const sound = moves.map((by) => ({ by, ...trouble(by) })).filter(({ thinWebs }) => thinWebs === 0);
  const length = ({ by: [x, y] }: { by: Point }) => Math.hypot(x, y);
  sound.sort((a, b) => a.work - b.work || length(a) - length(b));
  const best = sound[0];
  if (!best || (best.work >= before.work && before.thinWebs === 0)) return [];
  const names = openings.map(({ name }) => name).join(', ');
  const figures = {
    names,
    beforeCount: before.tiles,
    afterCount: best.tiles,
    thinCount: before.thinWebs,
  };
  return [moved(question, best.by, { code: 'start.simplified', figures })];
}

function troubleOf(openings: readonly FloorOpening[], question: AlternativeQuestion, origin: Point): Trouble {
  const all = openings.map((one) => touchedBy(one, question.pattern, origin, question.ground.minWeb));
  const sum = (of: (one: (typeof all)[number]) => number) => all.reduce((total, one) => total + of(one), 0);
  return {
    tiles: sum(({ tiles }) => tiles),
    work: sum(({ tiles, inside }) => tiles + Number(inside)),
    thinWebs: sum(({ thinWebs }) => thinWebs),
  };
}

/** Moves on an axis that bring a joint onto an opening's middle, a tile's middle onto it, or its edge to the least web. */
function movesOn(axis: 0 | 1, openings: readonly FloorOpening[], question: AlternativeQuestion): Ticks[] {
  const { pattern, chosen, ground } = question;
  const { size, joint } = stretchOf({ low: 0, high: 0 }, pattern, axis);
  const module = size + joint;
  const moves = pattern.tiles.flatMap(({ ring }) => {
    const stands = chosen.choice.origin[axis] + ring[0]![axis];
    return openings.flatMap(({ box }) => {
      const [low, high] = axis === 0 ? [box.minX, box.maxX] : [box.minY, box.maxY];
      const middle = Math.round((low + high) / 2);
      const wanted = [
        middle + Math.ceil(joint / 2),
        middle - Math.round(size / 2),
        low - ground.minWeb,
        high + ground.minWeb - size,
      ];
      return wanted.flatMap((at) => bothWays(at - stands, module));
    });
  });
  return [...new Set([0, ...moves])];
}

/** The same move within one module either way. */
function bothWays(by: Ticks, module: Ticks): Ticks[] {
  const up = ((by % module) + module) % module;
  return up === 0 ? [0] : [up, up - module];
}
