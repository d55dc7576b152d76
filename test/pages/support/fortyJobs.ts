import { jobFile, type Varied } from './variedJobs.ts';

/** Cycles of different lengths, so that forty jobs meet in ever other company. */
const tiles: readonly (readonly [number, number])[] = [
  [8, 8],
  [12, 12],
  [24, 6],
  [24, 12],
  [6, 6],
  [18, 18],
  [4, 4],
];
const patterns = [
  'straight',
  '{running: 1/2}',
  '{straight: {turned: 45}}',
  '{running: 1/3}',
  '{straight: {turned: 30}}',
];
const shapes = [1, 1.4, 2.7, 5];
const tongues = [
  ['en', 'en'],
  ['es', 'es'],
  ['[en, es]', 'es'],
  ['[es, en]', 'en'],
  ['[pt, en]', 'pt'],
  ['pt', 'en'],
] as const;
const titles = [
  'Hall',
  'Wohnungseigentumsgemeinschaftsverwaltung am Kirchenalleeplatz',
  'Bath on the second floor between the stairs and the nursery of the Featherstonehaugh family',
  'Cuarto de lavado y planchado de la residencia universitaria',
];

const at = <T>(list: readonly T[], n: number): T => list[n % list.length]!;

/** From 2 to 400 sq ft, each room a little larger than the one before. */
const area = (n: number): number => 2 * 200 ** (n / 39);

/** A doorway and an obstacle where the room has place for them. */
function things(wide: number, deep: number, n: number): string {
  const door = `  doorways:\n    antechamber of the servants: {in: A-B, from A: 6 in, clear: 28 in, wall: 4 3/4 in, door line: 2 3/8 in, left: plain, right: plain, beyond: wood, only exit: yes}\n`;
  const shaft = `  obstacles:\n    ventilationshaft: {rectangle: 9 in x 7 in, from C-D: 0 in, from D-A: 11 in, meets: column}\n    drainpipe: {circle: 4 in, from A-B: 13 in, from D-A: 15 in}\n`;
  return `${wide > 40 && n % 3 !== 0 ? door : ''}${wide > 30 && deep > 30 && n % 2 === 0 ? shaft : ''}`;
}

function jobAt(n: number): Varied {
  const wide = Math.round(Math.sqrt(area(n) * 144 * at(shapes, n)) * 8) / 8;
  const deep = Math.round(((area(n) * 144) / wide) * 8) / 8;
  // No more pieces than a setter would lay of them in a room.
  const fitting = tiles.filter(([long, short]) => (area(n) * 144) / (long * short) < 1500);
  const tile = at(fitting, n);
  const [crew, owner] = at(tongues, n);
  const metric = n % 4 === 3;
  const length = (inches: number) => (metric ? `${Math.round(inches * 25.4)} mm` : `${inches} in`);
  return {
    walls: [length(wide), length(deep)],
    tile: [length(tile[0]), length(tile[1])],
    joint: metric ? '3 mm' : '1/8 in',
    pattern: at(patterns, n),
    paper: n % 2 === 0 ? 'letter' : 'a4',
    units: metric ? 'mm' : 'inches',
    crew,
    owner,
    title: at(titles, n),
    more: things(wide, deep, n),
  };
}

/** The last one: a corridor of small squares at 45 degrees has a cut at every step of its long walls. */
const corridor: Varied = {
  ...jobAt(38),
  walls: ['50 ft', '4 ft'],
  tile: ['2 in', '2 in'],
  joint: '1/8 in',
  units: 'inches',
  pattern: '{straight: {turned: 45}}',
  more: '',
};

/** Forty jobs of all sizes, papers and languages: slug → job file. */
export function fortyJobs(): Readonly<Record<string, string>> {
  return Object.fromEntries(
    Array.from({ length: 40 }, (_, n) => [
      `job-${String(n + 1).padStart(2, '0')}`,
      jobFile(n === 39 ? corridor : jobAt(n)),
    ]),
  );
}
