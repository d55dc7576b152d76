import { existsSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { buildSite } from '../../src/site/buildSite.ts';
import { fixtureCore, newPlace, writeJobs } from './fixture.ts';

const good = 'title: Boot room & WC\nstatus: planned';
const wish = { names: [], core: fixtureCore, sheetFolder: 'test/site/sheets', progress: () => undefined };

function reader(root: string) {
  return (path: string) => readFileSync(join(root, 'output', path), 'utf8');
}

describe('a build', () => {
  test('writes the index, a page a job, a page a sheet, the print documents and the data', async () => {
    const { root, places } = newPlace({ boot: good });
    const { problems } = await buildSite(places, wish);
    expect(problems).toEqual([]);
    const names = readdirSync(join(root, 'output', 'boot'), { recursive: true }).sort();
    expect(names).toEqual([
      'calendar.ics',
      'cuts.csv',
      'index.html',
      'note-sheet.html',
      'packet.json',
      'plain-sheet.html',
      'print',
      'print/crew.html',
      'print/owner.html',
      'print/packet.html',
      'saw.html',
    ]);
    expect(reader(root)('index.html')).toContain('./boot/index.html');
  });

  test('escapes what the job file says, in pages and in print rules', async () => {
    const { root, places } = newPlace({ boot: 'title: <script>"</style>\nstatus: planned' });
    await buildSite(places, wish);
    const read = reader(root);
    for (const page of ['index.html', 'boot/index.html', 'boot/plain-sheet.html', 'boot/print/crew.html']) {
      expect(read(page)).not.toMatch(/<script|<\/style>\\?\n?"|<b>Marsh/);
    }
    expect(read('boot/print/crew.html').match(/<\/style>/g)).toHaveLength(1);
  });

  test('links only to what it wrote, and to nothing on a network', async () => {
    const { root, places } = newPlace({ boot: good });
    await buildSite(places, wish);
    const pages = readdirSync(join(root, 'output'), { recursive: true }).map(String);
    for (const page of pages.filter((name) => name.endsWith('.html'))) {
      const html = reader(root)(page).replace(/<script[\s\S]*?<\/script>/g, '');
      const links = [...html.matchAll(/(?:href|src)="([^"]*)"/g)].map(
        (match) => match[1]?.replace(/#.*/s, '') ?? '',
      );
      const broken = links.filter((link) => !existsSync(join(root, 'output', page, '..', link)));
      expect({ page, broken }).toEqual({ page, broken: [] });
    }
  });

  test('removes the pages of a job that is gone', async () => {
    const { root, places } = newPlace({ boot: good, hall: good });
    await buildSite(places, wish);
    rmSync(join(root, 'jobs', 'hall'), { recursive: true });
    await buildSite(places, wish);
    expect(existsSync(join(root, 'output', 'hall'))).toBe(false);
    expect(reader(root)('index.html')).not.toContain('hall');
  });

  test('of one job leaves the others as they are, but in the index', async () => {
    const { root, places } = newPlace({ boot: good, hall: good });
    await buildSite(places, wish);
    writeJobs(root, { boot: 'title: New name\nstatus: planned', hall: 'bad' });
    await buildSite(places, { ...wish, names: ['boot'] });
    const read = reader(root);
    expect(read('boot/index.html')).toContain('New name');
    expect(read('hall/index.html')).toContain('Boot room');
    expect(read('index.html')).toMatch(/New name[\s\S]*hall/);
  });

  test('passes over a job that has not changed, until its file or the program does', async () => {
    const { root, places } = newPlace({ boot: good, hall: good });
    const built = async (program: string) => {
      const told: string[] = [];
      await buildSite(places, { ...wish, program, progress: (line) => void told.push(line) });
      return told.filter((line) => line.startsWith('Working out'));
    };
    expect(await built('one')).toHaveLength(2);
    expect(await built('one')).toEqual([]);
    expect(reader(root)('index.html')).toContain('./boot/index.html');
    writeJobs(root, { hall: `${good}\nowner: Lee` });
    expect(await built('one')).toEqual(['Working out hall']);
    expect(await built('two')).toHaveLength(2);
  });
});

describe('a job with problems', () => {
  test.each([
    ['a problem in its file', 'title: x\nbad'],
    ['an error in the core', `${good}\nthrows`],
  ])('%s: keeps its last good pages, marked as stale, with the problem listed', async (_, text) => {
    const { root, places } = newPlace({ boot: good, hall: good });
    await buildSite(places, wish);
    writeJobs(root, { boot: text });
    const { problems } = await buildSite(places, wish);
    const read = reader(root);
    expect(problems).toHaveLength(1);
    for (const page of ['index.html', 'boot/index.html', 'boot/plain-sheet.html']) {
      expect(read(page)).toContain('has changed since');
    }
    expect(read('boot/print/crew.html')).toContain('changed since');
    expect(read('boot/index.html')).toContain('jobs/boot/job.yaml');
    expect(read('hall/index.html')).not.toContain('has changed since');
  });

  test('that was never good has a page with its problems', async () => {
    const { root, places } = newPlace({ boot: 'bad', hall: good });
    const { problems } = await buildSite(places, wish);
    expect(problems[0]).toMatch(/^jobs\/boot\/job\.yaml:1:1: /);
    expect(reader(root)('boot/index.html')).toContain('jobs/boot/job.yaml:1:1');
    expect(existsSync(join(root, 'output/hall/plain-sheet.html'))).toBe(true);
  });

  test('in a sheet keeps what was there and harms no other job', async () => {
    const { root, places } = newPlace({ boot: good, hall: good });
    await buildSite(places, wish);
    writeJobs(root, { boot: `${good}\nbroken: yes`, hall: 'title: Hall two\nstatus: planned' });
    const { problems } = await buildSite(places, wish);
    expect(problems).toHaveLength(1);
    expect(problems[0]).toMatch(/broken-sheet.*no\.such\.words.*"es"/s);
    expect(existsSync(join(root, 'output/boot/plain-sheet.html'))).toBe(true);
    expect(reader(root)('hall/index.html')).toContain('Hall two');
  });

  test('of a folder name gets no page and a way out', async () => {
    const { root, places } = newPlace({ 'Boot Room': good });
    const { problems } = await buildSite(places, wish);
    expect(problems[0]).toContain('Rename the folder');
    expect(existsSync(join(root, 'output', 'Boot Room'))).toBe(false);
  });
});

describe('a finished job', () => {
  const finished = 'title: Hall\nstatus: finished';

  test('keeps its packet in its folder and is built from it', async () => {
    const { root, places } = newPlace({ hall: finished });
    await buildSite(places, wish);
    expect(existsSync(join(root, 'jobs/hall/packet.json'))).toBe(true);
    writeJobs(root, { hall: 'title: Another\nstatus: finished' });
    expect((await buildSite(places, wish)).problems).toEqual([]);
    expect(reader(root)('hall/index.html')).toContain('Hall');
    expect(reader(root)('hall/index.html')).not.toContain('Another');
  });

  test('says so when its file speaks of another revision', async () => {
    const { root, places } = newPlace({ hall: finished });
    await buildSite(places, wish);
    writeJobs(root, { hall: `${finished}\nrevision: B` });
    const { problems } = await buildSite(places, wish);
    expect(problems).toEqual([expect.stringContaining('revision A, but the file says B')]);
  });
});
