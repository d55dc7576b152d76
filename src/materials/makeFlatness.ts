import type { FlatnessGrid } from '../job/Job.ts';
import { type System, TICKS_PER_MM, type Ticks } from '../measure/index.ts';
import {
  type Departure,
  departures,
  feet,
  flatnessClass,
  flatnessGap,
  gridMean,
  inches,
  millimetres,
} from '../trade/index.ts';
import type { Flatness, FlatnessUnder } from './Flatness.ts';

/** A side that asks for the ordinary class, and one that asks for the tight one. */
const sides = { ordinary: inches(12), tight: inches(24) } as const;

/** Straightedges as they are sold in each system, the longest first. */
const straightedges = {
  inches: [feet(10), feet(2)],
  mm: [millimetres(3000), millimetres(2000)],
} as const;

/** Readings on a grid judged: class, worst spots, and what fills the hollows; all of them geometry on the limits of the class. */
export function makeFlatness(
  grid: FlatnessGrid,
  floor: {
    readonly longest: Ticks;
    readonly areaM2: number;
    readonly system: System;
    readonly bagLitres?: number;
  },
): Flatness {
  const { heights, every } = grid;
  const known = heights.flat().filter((height) => height !== null);
  const highest = Math.max(...known);
  const found = straightedges[floor.system].map((straightedge) => ({
    straightedge,
    all: departures(heights, every, straightedge),
  }));
  const under = found.map(({ straightedge, all }) => judged(straightedge, all, floor.longest, floor.system));
  const patchMean = gridMean(hollowsOf(heights, found[0]?.all ?? []));
  const levelMean = gridMean(heights.map((row) => row.map((one) => (one === null ? null : highest - one))));
  // A millimetre over a square metre is a litre.
  const [patchLitres, levelLitres] = [patchMean, levelMean].map(
    (mean) => (mean / TICKS_PER_MM) * floor.areaM2,
  );
  const bags = (litres: number) => Math.ceil(litres / floor.bagLitres! - 1e-9);
  return {
    needed: flatnessClass(floor.longest, floor.system).name,
    class: classOf(found, floor.system),
    under,
    range: known.length === 0 ? 0 : highest - Math.min(...known),
    patchMean: Math.round(patchMean),
    levelMean: Math.round(levelMean),
    patchLitres: patchLitres!,
    levelLitres: levelLitres!,
    ...(floor.bagLitres ? { patchBags: bags(patchLitres!), levelBags: bags(levelLitres!) } : {}),
  };
}

const deepest = (all: readonly Departure[]): Departure | undefined =>
  all.reduce<Departure | undefined>((best, one) => (best && best.depth >= one.depth ? best : one), undefined);

function judged(
  straightedge: Ticks,
  all: readonly Departure[],
  longest: Ticks,
  system: System,
): FlatnessUnder {
  const limit = flatnessGap(longest, straightedge, system);
  const worst = deepest(all);
  return { straightedge, limit, pass: (worst?.depth ?? 0) <= limit, ...(worst ? { worst } : {}) };
}

/** The best class whose limits hold under every straightedge that could be laid. */
function classOf(
  found: readonly { readonly straightedge: Ticks; readonly all: readonly Departure[] }[],
  system: System,
): Flatness['class'] {
  const keeps = (side: Ticks) =>
    found.every(({ straightedge, all }) => judged(straightedge, all, side, system).pass);
  if (found.every(({ all }) => all.length === 0)) return 'unknown';
  if (keeps(sides.tight)) return 'tight';
  return keeps(sides.ordinary) ? 'ordinary' : 'neither';
}

/** Depth of the hollow at each reading; 0 where there is none. */
function hollowsOf(heights: FlatnessGrid['heights'], all: readonly Departure[]): (number | null)[][] {
  const hollow = new Map(
    all.filter(({ kind }) => kind === 'hollow').map((one) => [`${one.row}/${one.number}`, one.depth]),
  );
  return heights.map((row, i) =>
    row.map((one, j) => (one === null ? null : Math.max(0, hollow.get(`${i + 1}/${j + 1}`) ?? 0))),
  );
}
