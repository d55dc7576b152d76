import type { PatternAlong } from '../../job/Job.ts';
import type { Ticks } from '../../measure/index.ts';

/** How the walls of a field run against the pattern, what of it shows, and what would hide it. */
export interface Tapers {
  /** The wall or line that the pattern is square to now, and the pattern's own turn on top, in degrees. */
  readonly obeyed: PatternAlong;
  readonly turnedDeg: number;
  /** Every wall and long face within ten degrees of an axis of the pattern, longest first. */
  readonly walls: readonly Taper[];
  /** The pattern as it lies first, then what else it may be square to, least weighted taper first. */
  readonly ways: readonly TaperWay[];
  readonly advice: readonly TaperStep[];
}

/** One wall against the pattern's axis. */
export interface Taper {
  readonly edge: string;
  readonly seen: 'hidden' | 'plain' | 'focal';
  readonly length: Ticks;
  /** Angle off the axis in degrees, counter-clockwise. */
  readonly offDeg: number;
  /** How far it runs off over its whole length, and over one tile. */
  readonly runsOff: Ticks;
  readonly perTile: Ticks;
  /** The narrowest and the widest cut along it; missing where no tile is cut there. */
  readonly narrow?: Ticks;
  readonly wide?: Ticks;
  /** What it runs off as share of its narrowest cut, 1 at most; 0 where no tile is cut. */
  readonly ofCutShare: number;
  readonly shows: boolean;
}

/** A direction that the pattern may take. */
export interface TaperWay {
  readonly kind: 'now' | 'obey' | 'share';
  /** Walls that are in line then; none where the taper is shared. */
  readonly edges: readonly string[];
  /** Turn from the pattern as it lies now, in degrees, counter-clockwise. */
  readonly byDeg: number;
  /** Largest and summed taper, each wall's weighted: focal twice, hidden not at all. */
  readonly worst: Ticks;
  readonly sum: Ticks;
  /** How far each wall runs off then, in the order of `walls`. */
  readonly runsOff: readonly Ticks[];
}

export interface TaperStep {
  readonly code: string;
  readonly figures: Readonly<Record<string, number | string>>;
}
