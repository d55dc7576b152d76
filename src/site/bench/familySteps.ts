import { makeCuts } from '../../cuts/makeCuts.ts';
import { makeLayout } from '../../layout/makeLayout.ts';
import { makeRoom } from '../../room/makeRoom.ts';
import { makeTilePlans } from '../../tiles/makeTilePlans.ts';
import { core } from '../Core.ts';
import { leaningFloor } from './leaningFloor.ts';
import { type PatternFamily, patternFamilies } from './patternFamilies.ts';
import type { Step } from './Step.ts';

/** Widths of the rooms in inches; each is 17 in deeper than the one before. */
const WIDTHS = [64, 85, 106, 127, 148, 169, 190, 207];

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
  const { job, problems } = core.readJob(textOf(family, wide, deep), 'family');
  const made = job && makeRoom(job.surfaces[0]!, 'inches');
  if (!made || 'problems' in made) throw new Error(problems.map(({ code }) => code).join(', '));
  const layout = makeLayout(job, job.surfaces[0]!, made.room);
  if ('problems' in layout) throw new Error(layout.problems.map(({ code }) => code).join(', '));
  const plans = Object.values(makeTilePlans(job, [layout], [makeCuts(job, layout)]));
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
      known ??= WIDTHS.map((wide, i) => provedIn(family, wide, 73 + 17 * i));
      return known;
    };
    const share = (without: (room: Proved) => boolean) => async () => [
      (100 * rooms().filter(without).length) / WIDTHS.length,
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
