import { makeCuts } from '../../cuts/makeCuts.ts';
import { makeLayout } from '../../layout/makeLayout.ts';
import { searchStart } from '../../layout/start/search/searchStart.ts';
import { makeCurve } from '../../packet/makeCurve.ts';
import { familyFloor } from './familyFloor.ts';
import { type LeaningFloor, leaningFloor, roomSizes } from './leaningFloor.ts';
import { patternFamilies } from './patternFamilies.ts';
import { type Ready, readied, WISHES } from './readied.ts';
import type { Step } from './Step.ts';
import { timed } from './timed.ts';

const floors = (tile: string, pattern: string): LeaningFloor[] =>
  roomSizes.map((size) => ({ tile, pattern, ...size }));

/** Rooms to 300 sq ft with walls along the pattern, each a little out of square. */
const ALIGNED = [...floors('12 in x 12 in', 'straight'), ...floors('24 in x 12 in', '{running: 1/2}')];
/** Rooms to 300 sq ft laid at 45°, each a little out of square. */
const ASLANT = floors('12 in x 12 in', '{straight: {turned: 45}}');
/** Rooms to 5,000 sq ft at any angle. */
const ANY = [30, 45].flatMap((turned) =>
  [148, 1000].map((wide): LeaningFloor => {
    return { tile: '12 in x 12 in', pattern: `{straight: {turned: ${turned}}}`, wide, deep: 0.72 * wide };
  }),
);
const roomsIn = (name: string) =>
  roomSizes.map(({ wide, deep }) => familyFloor(patternFamilies[name]!, wide, deep));
/** Rooms to 300 sq ft in the two families that are laid most of those that lie in no courses. */
const NO_COURSES = ['hexagon', 'herringbone'].flatMap(roomsIn);
/** Halls of 5,000 sq ft in all families that lie in no courses, and in two of them at an angle. */
const HALLS = [
  ...['herringbone', 'basketweave', 'hexagon', 'two squares', 'four sizes', 'octagon and dot'].map(
    (name) => patternFamilies[name]!,
  ),
  { ...patternFamilies.hexagon!, pattern: '{hexagon: , turned: 22}' },
  { ...patternFamilies.herringbone!, pattern: '{herringbone: single, turned: 30}' },
].map((family) => familyFloor(family, 1000, 720));
const HALL: LeaningFloor = { tile: '36 in x 6 in', pattern: '{running: 1/3}', wide: 1000, deep: 720 };

const searched = ({ ground, pattern }: Ready) => searchStart(ground, pattern, WISHES);

/** Every 1/16 in each way: what a search without thought costs. */
function griddled(ready: Ready): number {
  const { scoreOf } = searchStart(ready.ground, ready.pattern, { ...WISHES, fixed: [0, 0] });
  const [wide, deep] = [ready.pattern.a[0], ready.pattern.b[1]];
  let least = Infinity;
  for (let x = 0; x < wide; x += 508) {
    for (let y = 0; y < deep; y += 508) least = Math.min(least, scoreOf([x, y]).halves);
  }
  return least;
}

function curveOf({ job, surface, room }: Ready) {
  const layout = makeLayout(job, surface, room);
  if ('problems' in layout) throw new Error('the floors of the bench can be laid');
  const stage = { surface, room, layout, cuts: makeCuts(job, layout) };
  return () => makeCurve(job, stage);
}

const median = (list: number[]) => [...list].sort((a, b) => a - b)[Math.floor(list.length / 2)]!;

/** The time that a run takes on each floor, told by one of them. */
async function over(
  list: readonly string[],
  run: (ready: Ready) => unknown,
  tell: (all: number[]) => number,
  warmUps = 2,
) {
  const spent: number[] = [];
  for (const text of list) {
    const ready = readied(text);
    spent.push(...(await timed(() => run(ready), { warmUps, times: 1 })));
  }
  return [tell(spent)];
}

async function curvesOf(list: readonly string[]): Promise<number[]> {
  const spent: number[] = [];
  for (const text of list) spent.push(...(await timed(curveOf(readied(text)), { warmUps: 1, times: 1 })));
  return spent;
}

/** How long it takes to prove a start, and to draw the curve of narrowest cut against tiles. */
export function startSteps(): readonly Step[] {
  const slowest = (list: number[]) => Math.max(...list);
  return [
    {
      name: 'start proved, walls along the pattern, median of 16',
      unit: 'ms',
      target: 10,
      measure: () => over(ALIGNED.map(leaningFloor), searched, median),
    },
    {
      name: 'start proved, any room to 5,000 sq ft, slowest of 5',
      unit: 'ms',
      target: 500,
      measure: () => over([...ANY, HALL].map(leaningFloor), searched, slowest),
    },
    {
      name: 'start proved, hexagon and herringbone, median of 16',
      unit: 'ms',
      target: 10,
      measure: () => over(NO_COURSES, searched, median),
    },
    {
      name: 'start proved, in no courses, to 5,000 sq ft, slowest',
      unit: 'ms',
      target: 500,
      measure: () => over(HALLS, searched, slowest),
    },
    {
      name: 'beside it: every 1/16 in of eight of them, median',
      unit: 'ms',
      measure: () => over(ALIGNED.slice(0, 8).map(leaningFloor), griddled, median, 0),
    },
    {
      name: 'curve of cuts against tiles, rooms to 300 sq ft, slowest',
      unit: 'ms',
      target: 1000,
      measure: async () => [slowest(await curvesOf(ALIGNED.map(leaningFloor)))],
    },
    {
      name: 'the same where tile lies at 45°, slowest',
      unit: 'ms',
      target: 1000,
      measure: async () => [slowest(await curvesOf(ASLANT.map(leaningFloor)))],
    },
    {
      name: 'the same of hexagon and herringbone, median of 16',
      unit: 'ms',
      target: 1000,
      measure: async () => [median(await curvesOf(NO_COURSES))],
    },
  ];
}
