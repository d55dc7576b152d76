import type { Job } from '../../job/Job.ts';
import { cutClasses } from '../../tiles/cutClasses.ts';
import { makeTilePlans } from '../../tiles/makeTilePlans.ts';
import { shareTiles } from '../../tiles/shareTiles.ts';
import { tileRules } from '../../tiles/tileRules.ts';
import { laidOut } from './laidOut.ts';
import { type LeaningFloor, leaningFloor, roomSizes } from './leaningFloor.ts';
import type { Step } from './Step.ts';
import { timed } from './timed.ts';

const PATTERNS = [
  { tile: '12 in x 12 in', pattern: 'straight' },
  { tile: '24 in x 12 in', pattern: '{running: 1/2}' },
  { tile: '36 in x 6 in', pattern: '{running: 1/3}' },
  { tile: '12 in x 12 in', pattern: '{straight: {turned: 45}}' },
];

/** Rooms out of square in four patterns, to 300 sq ft. */
const ROOMS = roomSizes.flatMap((size) => PATTERNS.map((floor): LeaningFloor => ({ ...floor, ...size })));

/** 5,000 sq ft in four patterns. */
const HALLS = PATTERNS.map((floor): LeaningFloor => ({ ...floor, wide: 1000, deep: 720 }));

type Laid = ReturnType<typeof laidOut>;

const planned = ({ job, layout, cuts }: Laid) => Object.values(makeTilePlans(job, [layout], [cuts]))[0]!;

function sharedOnly({ job, layout, cuts }: Laid): number {
  const classes = cutClasses(job.tiles[0] as Job['tiles'][number], [layout], [cuts]);
  const counts = classes.map(({ pieces }) => pieces.length);
  return shareTiles(tileRules(classes, { kerf: job.saw.kerf, narrowest: job.offcuts.narrowest }), counts)
    .length;
}

/** The time of one run a floor, of which the one is told that so many in a hundred stay under. */
async function slowest(floors: readonly Laid[], share: number, run: (floor: Laid) => unknown) {
  const spent: number[] = [];
  for (const floor of floors) spent.push(...(await timed(() => run(floor), { warmUps: 1, times: 1 })));
  spent.sort((a, b) => a - b);
  return [spent[Math.ceil(share * spent.length) - 1]!];
}

/** How long the fewest tiles take, how many plans stay without proof, and what the rule of the largest piece first takes alone. */
export function tileSteps(): readonly Step[] {
  const kept = new Map<readonly LeaningFloor[], readonly Laid[]>();
  const laid = (floors: readonly LeaningFloor[]) => {
    const made = kept.get(floors) ?? floors.map((floor) => laidOut(leaningFloor(floor)));
    kept.set(floors, made);
    return made;
  };
  const notProved = async () => {
    const plans = laid(ROOMS).map(planned);
    return [(100 * plans.filter(({ proved }) => !proved).length) / plans.length];
  };
  const more = async () => {
    const fewest = laid(ROOMS).reduce((sum, floor) => sum + planned(floor).from.length, 0);
    const shared = laid(ROOMS).reduce((sum, floor) => sum + sharedOnly(floor), 0);
    return [100 * (shared / fewest - 1)];
  };
  return [
    {
      name: 'fewest tiles, rooms to 300 sq ft, 95th in 100',
      unit: 'ms',
      target: 100,
      measure: () => slowest(laid(ROOMS), 0.95, planned),
    },
    { name: 'plans of them without proof', unit: '%', target: 2, measure: notProved },
    {
      name: 'fewest tiles, 5,000 sq ft, slowest of four patterns',
      unit: 'ms',
      target: 2000,
      measure: () => slowest(laid(HALLS), 1, planned),
    },
    {
      name: 'beside it: largest piece first alone, 95th in 100',
      unit: 'ms',
      measure: () => slowest(laid(ROOMS), 0.95, sharedOnly),
    },
    { name: 'beside it: sawn tiles it takes more', unit: '%', measure: more },
  ];
}
