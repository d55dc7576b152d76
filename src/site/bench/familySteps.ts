import { makeTilePlans } from '../../tiles/makeTilePlans.ts';
import { laidOut } from './laidOut.ts';
import { leaningFloor, roomSizes } from './leaningFloor.ts';
import { type PatternFamily, patternFamilies } from './patternFamilies.ts';
import type { Step } from './Step.ts';

function textOf({ tiles, pattern }: PatternFamily, wide: number, deep: number): string {
  const kinds = Object.entries(tiles).map(
    ([key, size]) =>
      `  ${key}: {name: ${key}, ${size}, thick: 3/8 in, edge: rectified, turns: any, material: porcelain, box: {pieces: 10}}\n`,
  );
  return leaningFloor({ tile: '12 in x 12 in', wide, deep, pattern }).replace(
    /tile:\n[\s\S]*?\njoint:/,
    () => `tile:\n${kinds.join('')}joint:`,
  );
}

/** What one room of a family comes to: tiles above the bound of all its plans, and whether its start has a bound. */
function provedIn(family: PatternFamily, wide: number, deep: number) {
  const { job, layout, cuts } = laidOut(textOf(family, wide, deep));
  const plans = Object.values(makeTilePlans(job, [layout], [cuts]));
  return {
    gap: Math.max(...plans.map(({ needed, bound }) => needed - bound)),
    proved: plans.every((plan) => plan.proved),
    isBound: layout.pattern.inCourses,
  };
}

type Proved = ReturnType<typeof provedIn>;

/** How far the proofs of start and tiles reach in each family of patterns: eight rooms to 300 sq ft, out of square. */
export function familySteps(): readonly Step[] {
  return Object.entries(patternFamilies).flatMap(([name, family]) => {
    let known: readonly Proved[] | undefined;
    const rooms = () => {
      known ??= roomSizes.map(({ wide, deep }) => provedIn(family, wide, deep));
      return known;
    };
    const share = (without: (room: Proved) => boolean) => async () => [
      (100 * rooms().filter(without).length) / roomSizes.length,
    ];
    return [
      { name: `${name}: starts without a bound`, unit: '%', measure: share(({ isBound }) => !isBound) },
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
