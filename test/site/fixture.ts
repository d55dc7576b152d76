import { mkdirSync, mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import type { Job } from '../../src/job/Job.ts';
import type { Packet } from '../../src/packet/Packet.ts';
import type { SheetView } from '../../src/sheets/SheetView.ts';
import type { Core } from '../../src/site/Core.ts';
import { placesUnder } from '../../src/site/places.ts';

const home = dirname(dirname(import.meta.dirname));

/** A job file of the fixture is `key: value` lines; the line `bad` is a problem, `throws` an error in the core. */
function readJob(text: string, file: string): ReturnType<Core['readJob']> {
  const lines = text.split('\n');
  const bad = lines.indexOf('bad');
  if (bad >= 0) {
    const place = { file, line: bad + 1, column: 1, path: ['bad'] };
    return { problems: [{ code: 'fixture', found: 'bad', figures: {}, ...place }] };
  }
  const fields = Object.fromEntries(lines.map((line) => line.split(': ')));
  return {
    job: { ...fields, text, revision: { letter: fields.revision ?? 'A' } } as unknown as Job,
    problems: [],
  };
}

function makePacket(job: Job): ReturnType<Core['makePacket']> {
  const { title, status, text } = job as unknown as Record<string, string>;
  if (text?.includes('throws')) throw new Error('a fault of the core');
  const head = {
    title,
    status,
    revision: job.revision.letter,
    date: '2027-03-01',
    owner: 'J. <b>Marsh</b>',
    stamp: 'a1b2c3',
  };
  const spec = {
    print: { crew: ['en'], owner: 'es', system: 'inches', paper: 'letter' },
    sheets: text?.includes('broken') ? ['broken'] : [],
  };
  const packet = {
    format: 'tile-job-packet/1',
    ticksPerMm: 320,
    job: head,
    spec,
    surfaces: [],
    calendar: [],
    notes: [],
  };
  return { packet: packet as unknown as Packet };
}

function sheet(packet: Packet, name: string, more: Partial<SheetView>): SheetView {
  const { title, revision, date, stamp } = packet.job;
  const head = { job: title, revision, date, stamp };
  const rows = Array.from({ length: 60 }, (_, n) => `${title} ${n + 1}`);
  const fixed = {
    name,
    template: name,
    title: 'Plain "sheet"',
    question: 'Is it <all> here?',
    lang: 'en',
    for: 'all',
  } as const;
  return {
    ...fixed,
    bundles: ['crew', 'packet'],
    landscape: false,
    bars: false,
    units: 'inches',
    half: '0.5',
    paper: 'letter',
    head,
    data: { rows },
    ...more,
  };
}

function makeSheets(packet: Packet): readonly SheetView[] {
  const { sheets } = packet.spec as unknown as { sheets: string[] };
  const plain = sheet(packet, 'plain-sheet', { scale: '1:16', landscape: true });
  const broken = sheet(packet, 'broken-sheet', { lang: 'es', paper: 'a4', bundles: ['owner', 'packet'] });
  const note = sheet(packet, 'note-sheet', {
    title: 'Notes',
    lang: 'es',
    paper: 'a4',
    bundles: ['owner', 'packet'],
  });
  return sheets.length > 0 ? [plain, broken] : [plain, note];
}

/** A core of a few lines in place of the program's own. */
export const fixtureCore: Core = {
  readJob,
  makePacket,
  makeSheets,
  sawPages: (_, lang) => [{ lang, styles: '', surfaces: [], file: 'saw.html', others: [] }],
};

/** An empty place to build in, its job files written from slug → text. */
export function newPlace(jobs: Readonly<Record<string, string>>) {
  const root = mkdtempSync(join(tmpdir(), 'packet-site-'));
  writeJobs(root, jobs);
  return { root, places: placesUnder(home, root) };
}

export function writeJobs(root: string, jobs: Readonly<Record<string, string>>): void {
  for (const [slug, text] of Object.entries(jobs)) {
    mkdirSync(join(root, 'jobs', slug), { recursive: true });
    writeFileSync(join(root, 'jobs', slug, 'job.yaml'), text);
  }
}
