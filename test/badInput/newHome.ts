import { mkdtempSync, readdirSync, readFileSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { vi } from 'vitest';
import { run } from '../../src/site/commands/build.ts';
import { findBrowser } from '../../src/site/setup/findBrowser.mjs';
import { writeJobs } from '../site/fixture.ts';

const program = join(import.meta.dirname, '../..');
const browser = findBrowser(process.env, join(program, '.cache/browser'));

export interface Home {
  readonly root: string;
  /** Writes job files, slug → name of a file in `jobs` beside this one. */
  readonly write: (jobs: Readonly<Record<string, string>>) => void;
  /** What `npm start` does where there is no browser: pages without PDFs. Gives what it says. */
  readonly build: () => Promise<string>;
  /** What `npm start` does: pages and PDFs. Gives its exit code. */
  readonly print: () => Promise<number>;
  /** Text of a file of the output. */
  readonly read: (path: string) => string;
  /** Every file of a folder of the output with its text. */
  readonly readAll: (folder: string) => Readonly<Record<string, string>>;
}

async function start(root: string, withBrowser: boolean) {
  const said: string[] = [];
  const take = (text: string | Uint8Array) => said.push(String(text)) > 0;
  const spies = [process.stderr, process.stdout].map((out) =>
    vi.spyOn(out, 'write').mockImplementation(take),
  );
  try {
    const input = withBrowser ? { home: root, browser: String(browser), args: [] } : { home: root, args: [] };
    return { exitCode: await run(input), said: said.join('') };
  } finally {
    for (const spy of spies) spy.mockRestore();
  }
}

/** A folder of its own for jobs and output, built by the program as it is. */
export function newHome(jobs: Readonly<Record<string, string>>): Home {
  const root = mkdtempSync(join(tmpdir(), 'packet-whole-'));
  for (const name of ['layouts', 'node_modules', 'src', 'package-lock.json'])
    symlinkSync(join(program, name), join(root, name));
  const write: Home['write'] = (files) => {
    const texts = Object.entries(files).map(([slug, file]) => [
      slug,
      readFileSync(join(import.meta.dirname, 'jobs', file), 'utf8'),
    ]);
    writeJobs(root, Object.fromEntries(texts));
  };
  write(jobs);
  const read = (path: string) => readFileSync(join(root, 'output', path), 'utf8');
  const files = (folder: string) =>
    readdirSync(join(root, 'output', folder), { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => join(entry.parentPath, entry.name).slice(join(root, 'output').length + 1));
  const readAll = (folder: string) =>
    Object.fromEntries(
      files(folder)
        .sort()
        .map((path) => [path, read(path)]),
    );
  const build = async () => (await start(root, false)).said;
  const print = async () => (await start(root, true)).exitCode;
  return { root, write, build, print, read, readAll };
}
