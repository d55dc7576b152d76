import type { Ticks } from '../../measure/index.ts';
import type { Taper, TaperStep, TaperWay } from './Tapers.ts';

/** Another direction is worth a word when it takes off a fifth of the largest taper or more. */
const WORTH = 0.8;

/**
 * What hides the tapers that show: at each such wall a cut wide enough, and another direction where one is clearly better.
 *
 * @param shows the share of a cut from which a taper shows.
 * @param room how wide a cut square to each wall may be: the size of the tile that way, in the order of `walls`.
 */
export function taperAdvice(
  walls: readonly Taper[],
  room: readonly Ticks[],
  [now, best]: readonly TaperWay[],
  shows: number,
): TaperStep[] {
  const shown = walls.map((wall, i) => ({ wall, room: room[i]! })).filter(({ wall }) => wall.shows);
  if (shown.length === 0) return [];
  return [...shown.map(({ wall, room: size }) => widerCut(wall, size, shows)), ...otherWay(now!, best)];
}

function widerCut({ edge, runsOff }: Taper, size: Ticks, shows: number): TaperStep {
  const cut = Math.ceil(runsOff / shows);
  return cut + runsOff <= size
    ? { code: 'taper.wideCut', figures: { edge, cut } }
    : { code: 'taper.tooMuch', figures: { edge } };
}

function otherWay(now: TaperWay, best: TaperWay | undefined): TaperStep[] {
  if (!best || best.worst > WORTH * now.worst) return [];
  const figures = { edge: best.edges.join(' '), byNumber: best.byDeg, most: Math.max(...best.runsOff) };
  return [{ code: best.kind === 'share' ? 'taper.between' : 'taper.obey', figures }];
}
