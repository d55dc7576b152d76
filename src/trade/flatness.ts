import type { System, Ticks } from '../measure/index.ts';
import type { Fact } from './Fact.ts';
import { inches, millimetres } from './inches.ts';

interface FlatnessRow {
  readonly gap: number;
  readonly over: number;
  readonly shortGap: number;
  readonly shortOver: number;
}

interface FlatnessRule {
  readonly tightFrom: number;
  readonly ordinary: FlatnessRow;
  readonly tight: FlatnessRow;
}

/**
 * Flatness by the tile's longest side: tight from `tightFrom`. In inches, and in the millimetres that the standard itself prints
 * beside them, which are round and not converted. The short gap is 1/16 in of both classes, so 1.6 mm of both: a base is as flat
 * whichever a job is printed in.
 */
export const FLATNESS: Fact<Readonly<Record<System, FlatnessRule>>> = {
  value: {
    inches: {
      tightFrom: 15,
      ordinary: { gap: 1 / 4, over: 120, shortGap: 1 / 16, shortOver: 12 },
      tight: { gap: 1 / 8, over: 120, shortGap: 1 / 16, shortOver: 24 },
    },
    mm: {
      tightFrom: 380,
      ordinary: { gap: 6, over: 3000, shortGap: 1.6, shortOver: 300 },
      tight: { gap: 3, over: 3000, shortGap: 1.6, shortOver: 610 },
    },
  },
  mark: 'S',
  source: 'ANSI A108.01',
};

/**
 * The side from which a tile asks for the tight class, in ticks.
 *
 * @example tightFrom('inches') //=> 121920
 * @example tightFrom('mm') //=> 121600
 */
export function tightFrom(system: System): Ticks {
  const side = FLATNESS.value[system].tightFrom;
  return system === 'mm' ? millimetres(side) : inches(side);
}

export interface FlatnessClass {
  readonly name: 'ordinary' | 'tight';
  readonly gap: Ticks;
  readonly over: Ticks;
  readonly shortGap: Ticks;
  readonly shortOver: Ticks;
}

/**
 * How flat the base must be for a tile, all in ticks, by the figures of the system that the job is printed in.
 *
 * @example
 * flatnessClass(121920).name //=> 'tight'
 * flatnessClass(121839).name //=> 'ordinary'
 * flatnessClass(96000, 'mm').gap //=> 1920
 */
export function flatnessClass(longestSide: Ticks, system: System = 'inches'): FlatnessClass {
  const rule = FLATNESS.value[system];
  const ticks = system === 'mm' ? millimetres : inches;
  const name = longestSide >= tightFrom(system) ? 'tight' : 'ordinary';
  const { gap, over, shortGap, shortOver } = rule[name];
  return {
    name,
    gap: ticks(gap),
    over: ticks(over),
    shortGap: ticks(shortGap),
    shortOver: ticks(shortOver),
  };
}

/**
 * Largest gap under a straightedge of a given length, in ticks. Between the two spans of the rule the gap grows in
 * line with the length, which is the stricter reading; it is never under the gap of the short span.
 *
 * @example
 * flatnessGap(97536, 975360) //=> 2032
 * flatnessGap(97536, 97536) //=> 508
 * flatnessGap(96000, 640000, 'mm') //=> 1280
 */
export function flatnessGap(longestSide: Ticks, straightedge: Ticks, system: System = 'inches'): Ticks {
  const { gap, over, shortGap, shortOver } = flatnessClass(longestSide, system);
  if (straightedge <= shortOver) return shortGap;
  return Math.max(shortGap, Math.round((gap * Math.min(straightedge, over)) / over));
}

/** Straightedges whose lengths differ by no more than this share are sold for each other: 10 ft and 3 m, 2 ft and 610 mm. */
const SAME_EDGE = 0.02;

/**
 * The straightedge that a reading was taken with, by the name that the rule has for it in the system of the job: 10 ft is 3 m where
 * it is printed in millimetres. One that the rule does not name stays as it was written.
 *
 * @example
 * straightedgeAsNamed(975360, { over: 960000, shortOver: 195200 }) //=> 960000
 * straightedgeAsNamed(640000, { over: 960000, shortOver: 195200 }) //=> 640000
 */
export function straightedgeAsNamed(
  straightedge: Ticks,
  { over, shortOver }: Pick<FlatnessClass, 'over' | 'shortOver'>,
): Ticks {
  const alike = (named: Ticks) => Math.abs(straightedge - named) <= SAME_EDGE * named;
  return [over, shortOver].find(alike) ?? straightedge;
}
