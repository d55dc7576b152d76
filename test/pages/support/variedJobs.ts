import { demoJobs } from './buildJobs.ts';

/** What a generated job is like; lengths with their unit. */
export interface Varied {
  readonly walls: readonly [string, string];
  readonly tile: readonly [string, string];
  readonly joint: string;
  readonly pattern: string;
  readonly paper: 'letter' | 'a4';
  readonly units: 'inches' | 'mm';
  readonly crew: string;
  readonly owner: string;
  readonly title: string;
  readonly more?: string;
}

export function jobFile(job: Varied): string {
  const [wide, deep] = job.walls;
  return `
title: ${job.title}
owner: ${job.title}, for the attention of the owner
place: 1 ${job.title} Street
status: planned
revision: {letter: A, date: 2027-01-04}
print: {paper: ${job.paper}, units: ${job.units}, saw step: ${job.units === 'mm' ? '1 mm' : '1/16 in'}, crew: ${job.crew}, owner: ${job.owner}}
work: {from: 2027-01-11, days: mon-fri, hours: 08:00-16:00, pace: 15 sq ft an hour}
tile:
  field: {name: ${job.title} porcelain, read: [${job.tile.join(' x ')}], thick: 9 mm, edge: rectified, turns: any, material: porcelain, box: {pieces: 10}}
joint: ${job.joint}
floor:
  walls: {A-B: {read: ${wide}}, B-C: {read: ${deep}, meets: cabinet}, C-D: {read: ${wide}}, D-A: {read: ${deep}, seen: focal}}
${job.more ?? ''}
  exposure: dry
  pattern: ${job.pattern}
  start: {along: best, across: best}
base:
  below: boards
  removed: {carpet: 10 mm}
  new: {mortar under tile: 3 mm, tile: 9 mm}
products:
  mortar: {notch: 1/4 in x 3/8 in x 1/4 in, bag: 50 lb}
  grout: {kind: cement, bag: 10 lb, colour: ${job.title}}
  sealer: {kind: penetrating}
`;
}

const plain = {
  joint: '1/8 in',
  pattern: 'straight',
  paper: 'letter',
  units: 'inches',
  crew: 'en',
  owner: 'en',
} as const;
const door =
  'in: A-B, from A: 12 in, clear: 30 in, wall: 4 3/4 in, door line: 2 3/8 in, left: plain, right: plain';

/** From 2 to 400 sq ft, both papers, both systems, all languages, long words. */
const generated: Readonly<Record<string, Varied>> = {
  'two-feet': { ...plain, walls: ['18 in', '16 in'], tile: ['8 in', '8 in'], title: 'Closet' },
  'four-hundred': {
    ...plain,
    walls: ['20 ft', '20 ft'],
    tile: ['23 5/8 in', '11 13/16 in'],
    pattern: '{running: 1/3}',
    title: 'Great room',
    crew: '[en, es]',
  },
  'two-tongues': {
    ...plain,
    walls: ['2630 mm', '3410 mm'],
    tile: ['597 mm', '298 mm'],
    joint: '3 mm',
    pattern: '{running: 1/3}',
    paper: 'a4',
    units: 'mm',
    title: 'Cozinha',
    crew: '[pt, en]',
    owner: 'pt',
    more: `  doorways:\n    corredor: {${door}, beyond: wood}`,
  },
  'long-words': {
    ...plain,
    walls: ['9 ft 1 in', '7 ft 3 in'],
    tile: ['12 in', '12 in'],
    title: 'Wohnungseigentumsgemeinschaftsverwaltung Kirchenallee',
    crew: '[es, en]',
    paper: 'a4',
    more: `  doorways:\n    antechamber of the servants: {${door}, beyond: wood, only exit: yes}\n  obstacles:\n    ventilationshaft: {rectangle: 14 in x 9 in, from C-D: 0 in, from D-A: 20 in, meets: column}`,
  },
  'large-format': {
    walls: ['6020 mm', '4480 mm'],
    tile: ['597 mm', '597 mm'],
    joint: '3 mm',
    pattern: '{straight: {turned: 30}}',
    paper: 'a4',
    units: 'mm',
    crew: 'es',
    owner: 'es',
    title: 'Salón',
  },
  corridor: {
    ...plain,
    walls: ['21 ft 3 in', '31 in'],
    tile: ['23 5/8 in', '5 7/8 in'],
    pattern: '{running: 1/3}',
    title: 'Corridor',
    more: `  doorways:\n    hall: {${door}, beyond: carpet}`,
  },
  // Rings centred off their tiles, told under each card in two languages.
  'wet-room': {
    ...plain,
    walls: ['80 3/4 in', '62 1/2 in'],
    tile: ['7 13/16 in', '7 13/16 in'],
    title: 'Wet room',
    crew: '[es, en]',
    more: '  doorways:\n    hall: {in: D-A, from D: 10 in, clear: 28 in, wall: 4 1/2 in, left: undercut 1/2 in, right: undercut 1/2 in, beyond: tile}\n  obstacles:\n    drain: {circle: 4 in, from B-C: 20 in, from A-B: 30 in, meets: drain}\n    flange: {circle: 7 in, from C-D: 13 in, from D-A: 54 in}',
  },
  'small-squares': {
    ...plain,
    walls: ['40 in', '34 in'],
    tile: ['2 in', '2 in'],
    title: 'Shower',
    owner: 'es',
  },
};

/** Demos with the other paper and languages, and jobs of all sizes: slug → job file. */
export function variedJobs(): Readonly<Record<string, string>> {
  const swapped = demoJobs()
    ['fernlea-boot-room']!.replace('paper: letter', 'paper: a4')
    .replace('crew: [en, es], owner: en', 'crew: [es, en], owner: es');
  const spanish = demoJobs()['fernlea-boot-room']!.replace(
    'crew: [en, es], owner: en',
    'crew: es, owner: es',
  );
  const made = Object.entries(generated).map(([slug, job]) => [slug, jobFile(job)] as const);
  return { 'boot-room-swapped': swapped, 'boot-room-spanish': spanish, ...Object.fromEntries(made) };
}
