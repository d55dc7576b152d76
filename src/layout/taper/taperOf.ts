import { TICKS_PER_INCH, type Ticks } from '../../measure/index.ts';
import { TAPER_SHOWS, taperShare } from '../../trade/index.ts';
import type { Taper } from './Tapers.ts';
import type { WallLine } from './wallLines.ts';

/** One wall against the pattern: how far it runs off, in all and over a tile of this length, on which cuts, and whether that is seen. */
export function taperOf(
  { edge, seen, length, off }: WallLine,
  tile: Ticks,
  cuts: { readonly narrow: Ticks; readonly wide: Ticks } | undefined,
  shows: number,
): Taper {
  const runsOff = Math.round(length * Math.abs(Math.sin(off)));
  const ofCutShare = cuts ? taperShare(runsOff, cuts.narrow) : 0;
  const { leastInches } = TAPER_SHOWS.value;
  return {
    edge,
    seen,
    length,
    offDeg: (off * 180) / Math.PI,
    runsOff,
    perTile: Math.round(tile * Math.abs(Math.tan(off))),
    ...cuts,
    ofCutShare,
    shows: seen !== 'hidden' && runsOff > leastInches * TICKS_PER_INCH && ofCutShare > shows,
  };
}
