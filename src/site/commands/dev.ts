import { join, relative } from 'node:path';
import { Eleventy } from '@11ty/eleventy';
import { placesUnder } from '../places.ts';
import { readFolders } from '../readFolders.ts';
import type { CommandInput } from './CommandInput.ts';

function portOf(args: readonly string[]): number {
  const given = args.find((arg) => arg.startsWith('--port='))?.slice('--port='.length);
  return given === undefined ? 8080 : Number(given);
}

/** Looks now and then which jobs there are: the watcher tells of edits, but not reliably of a folder that goes. */
function followFolders(jobs: string, rebuild: (path: string) => Promise<void>): void {
  const list = () =>
    readFolders(jobs)
      .map((folder) => folder.slug)
      .join(' ');
  let known = list();
  setInterval(() => {
    const now = list();
    if (now !== known) rebuild('./jobs/');
    known = now;
  }, 1000);
}

/** Serves the pages and builds them anew on every edit. Runs until it is stopped. */
export async function run({ home, args }: CommandInput): Promise<number> {
  const port = portOf(args);
  if (!Number.isInteger(port) || port < 1 || port > 65535) {
    process.stderr.write('--port= expects a whole number from 1 to 65535, such as --port=8080\n');
    return 1;
  }
  const places = placesUnder(home);
  const served = relative(home, join(places.cache, 'dev'));
  const eleventy = new Eleventy('layouts', served, {
    configPath: '.eleventy.js',
    runMode: 'serve',
    quietMode: true,
  });
  await eleventy.init();
  followFolders(places.jobs, await eleventy.watch());
  await eleventy.serve(port);
  return 0;
}
