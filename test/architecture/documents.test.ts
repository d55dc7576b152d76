import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { readJob } from '../../src/job/readJob.ts';
import { makePacket } from '../../src/packet/makePacket.ts';
import { sheets } from '../../src/sheets/sheets.ts';
import {
  blocks,
  developers,
  documents,
  isThere,
  linksOf,
  pathsNamed,
  quoted,
  rowsOf,
  scriptsNamed,
  section,
} from './support/documents.ts';
import { fieldsOf } from './support/fieldsOf.ts';
import { folders } from './support/folders.ts';
import { jobKeys } from './support/jobKeys.ts';
import { ROOT, readSources } from './support/sources.ts';

const { scripts, dependencies, devDependencies } = JSON.parse(
  readFileSync(join(ROOT, 'package.json'), 'utf8'),
);
const everything = documents.map(({ text }) => text).join('\n');

describe.each(documents)('$name', ({ text }) => {
  test('names no path that is not there', () => {
    expect(pathsNamed(text).filter((path) => !isThere(path))).toEqual([]);
  });

  test('links to nothing that is not there', () => {
    expect(linksOf(text).filter((target) => !existsSync(join(ROOT, target)))).toEqual([]);
  });

  test('names no command that is not there', () => {
    expect(scriptsNamed(text).length).toBeGreaterThan(0);
    expect(scriptsNamed(text).filter((name) => !(name in scripts))).toEqual([]);
  });

  test('shows only job files that give a packet', () => {
    const jobs = blocks(text, 'yaml').filter((block) => block.startsWith('title:'));
    for (const example of jobs) {
      const { job, problems } = readJob(example, 'job.yaml', 'example');
      expect(problems).toEqual([]);
      expect(makePacket(job!)).not.toHaveProperty('problems');
    }
  });
});

describe('the documents together', () => {
  test('name every command', () => {
    expect(Object.keys(scripts).filter((name) => !scriptsNamed(everything).includes(name))).toEqual([]);
  });

  test('show a whole job file', () => {
    expect(blocks(documents[0]!.text, 'yaml').some((block) => block.startsWith('title:'))).toBe(true);
  });
});

describe('DEVELOPERS.md', () => {
  test('gives each folder of src its place, in the order of imports', () => {
    const named = rowsOf(section(developers, 'Map')).map(([cell]) => /^`src\/(\w+)`$/.exec(cell!)?.[1]);
    expect(named.filter((name) => name !== undefined)).toEqual(folders);
  });

  test('says why each package is there', () => {
    const named = new Set(quoted(section(developers, 'Dependencies')));
    const all = Object.keys({ ...dependencies, ...devDependencies });
    expect(all.filter((name) => !named.has(name) && !name.startsWith('@types/'))).toEqual([]);
  });

  test('has a row for every sheet in the order it is bound: for whom, and in which documents', () => {
    const rows = rowsOf(section(developers, 'Sheets')).map(([name, ...rest]) => [quoted(name!)[0], ...rest]);
    expect(rows).toEqual(sheets.map((sheet) => [sheet.name, sheet.for, sheet.bundles.join(', ')]));
  });

  test('names every field of the packet', () => {
    const core = readSources().filter(({ folder }) => folders.indexOf(folder) <= folders.indexOf('packet'));
    const fields = fieldsOf('Packet', core, ['Job']);
    const named = new Set(quoted(section(developers, 'The packet file')).flatMap((one) => one.split(/\W+/)));
    expect(fields.length).toBeGreaterThan(100);
    expect(fields.filter((field) => !named.has(field))).toEqual([]);
  });

  test('names every invariant with a test that is there', () => {
    const rows = rowsOf(section(developers, 'Invariants'));
    expect(rows.length).toBeGreaterThan(10);
    expect(rows.filter(([, held]) => pathsNamed(held ?? '').length === 0)).toEqual([]);
  });
});

describe('the table of the job file', () => {
  const rows = rowsOf(section(developers, 'The job file')).flatMap(([key, meaning, usual]) =>
    quoted(key ?? '').map((name) => ({ name, meaning, usual: usual ?? '' })),
  );
  const keys = jobKeys();

  test('has every key', () => {
    const leaves = keys.filter((key) => !keys.some((other) => other.startsWith(`${key}.`)));
    const named = new Set(rows.map(({ name }) => name));
    expect(leaves.filter((key) => !named.has(key))).toEqual([]);
  });

  test('has no key that the file may not have', () => {
    expect(rows.map(({ name }) => name).filter((name) => !keys.includes(name))).toEqual([]);
  });

  /** A job with nothing in it that may be left out. */
  const bare = (size: string, joint: string, long: string, short: string): string =>
    [
      'title: bare',
      'revision: {date: 2027-03-01}',
      `tile: {field: {read: ${size}, box: {pieces: 10}}}`,
      `joint: ${joint}`,
      'floor:',
      `  walls: {A-B: ${long}, B-C: ${short}, C-D: ${long}, D-A: ${short}}`,
      `  doorways: {hall: {in: D-A, from D: ${joint}, clear: ${size.split(' x ')[0]}}}`,
      `  pattern: {running: 1/2}`,
    ].join('\n');

  test.each([
    ['inches', bare('12 in x 12 in', '1/8 in', '8 ft', '5 ft')],
    ['millimetres', bare('300 mm x 300 mm', '3 mm', '2400 mm', '1500 mm')],
  ])('tells every default of a job in %s', (_, text) => {
    const { job, problems } = readJob(text, 'job.yaml', 'bare');
    expect(problems).toEqual([]);
    const untold = job!.defaults.filter(({ path, figures }) => {
      const key = path
        .replace(/^tile\.field/, 'tile.<name>')
        .replace('doorways.hall', 'doorways.<name>')
        .replace(/angles\..*/, 'angles.<name>');
      return !rows.find(({ name }) => name === key)?.usual.includes(String(figures.value));
    });
    expect(untold.filter(({ path }) => !/^(work\.from|base\.new)$/.test(path))).toEqual([]);
  });
});

describe('the checks see', () => {
  test('paths with and without a star, and nothing that is built or no path', () => {
    const text = '`src/job/Job.ts` `src/*.nothing` `output/a/b.html` `packet.json` `1/16` `a/b c` `{x/y}`';
    expect(pathsNamed(text)).toEqual(['src/job/Job.ts', 'src/*.nothing']);
    expect(pathsNamed(text).map(isThere)).toEqual([true, false]);
  });

  test('commands', () => {
    expect(scriptsNamed('Run `npm start -- a`, `npm run new -- b` or npm run test:long.')).toEqual([
      'start',
      'new',
      'test:long',
    ]);
  });

  test('a section up to the next heading of its level', () => {
    expect(section('# a\n## b\nx\n### c\ny\n## d\nz', 'b')).toBe('x\n### c\ny');
  });

  test('rows of a table without its head', () => {
    expect(rowsOf('| a | b |\n|---|---|\n| `c` | d \\| e |')).toEqual([['`c`', 'd \\| e']]);
  });
});
