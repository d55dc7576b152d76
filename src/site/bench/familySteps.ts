import { searchStart } from '../../layout/start/search/searchStart.ts';
import { makeTilePlans } from '../../tiles/makeTilePlans.ts';
import { familyFloor } from './familyFloor.ts';
import { laidOut } from './laidOut.ts';
import { roomSizes } from './leaningFloor.ts';
import { type PatternFamily, patternFamilies } from './patternFamilies.ts';
import { readied, WISHES } from './readied.ts';
import type { Step } from './Step.ts';

/** What one room of a family comes to: tiles above the bound of all its plans, and how far from its bound the best start stays. */
function provedIn(family: PatternFamily, wide: number, deep: number) {
  const text = familyFloor(family, wide, deep);
  const { ground, pattern } = readied(text);
  const { best, bound } = searchStart(ground, pattern, WISHES);
  const { job, layout, cuts } = laidOut(text);
  const plans = Object.values(makeTilePlans(job, [layout], [cuts]));
  return {
    gap: Math.max(...plans.map(({ needed, bound }) => needed - bound)),
    proved: plans.every((plan) => plan.proved),
    wallGap: Math.max(best.strips - bound.strips, best.halves - bound.halves) / FOOT,
    cutGap: bound.narrowest - best.narrowest,
  };
}

/** Ticks in a foot, and what a start may stay from its bound by to count as proved: 1/100 ft of wall, 1/100 in of cut in a foot. */
const FOOT = 97536;
const [WALL, CUT] = [0.01, 1 / 1200];
const isProved = ({ wallGap, cutGap }: Proved) => wallGap <= WALL && cutGap <= CUT;

type Proved = ReturnType<typeof provedIn>;

/** Three depths of each size: a share of a few in a hundred cannot be told by eight rooms. */
const ROOMS = roomSizes.flatMap(({ wide, deep }) => [-22, -11, 0].map((by) => ({ wide, deep: deep + by })));

/** How far the proofs of start and tiles reach in each family of patterns: rooms to 300 sq ft, out of square. */
export function familySteps(): readonly Step[] {
  return Object.entries(patternFamilies).flatMap(([name, family]) => {
    let known: readonly Proved[] | undefined;
    const rooms = () => {
      known ??= ROOMS.map(({ wide, deep }) => provedIn(family, wide, deep));
      return known;
    };
    const share = (without: (room: Proved) => boolean) => async () => [
      (100 * rooms().filter(without).length) / ROOMS.length,
    ];
    return [
      {
        name: `${name}: starts without proof`,
        unit: '%',
        target: 5,
        measure: share((room) => !isProved(room)),
      },
      {
        name: `${name}: wall above the bound, at most`,
        unit: 'ft/1000',
        target: 1000 * WALL,
        measure: async () => [1000 * Math.max(...rooms().map(({ wallGap }) => wallGap))],
      },
      {
        name: `${name}: tile plans without proof`,
        unit: '%',
        target: 5,
        measure: share(({ proved }) => !proved),
      },
      {
        name: `${name}: tiles above the bound, at most`,
        unit: 'tiles',
        target: 1,
        measure: async () => [Math.max(...rooms().map(({ gap }) => gap))],
      },
    ];
  });
}
