import { join } from 'node:path';
import { Eleventy } from '@11ty/eleventy';
import { placesUnder } from '../places.ts';
import type { CommandInput } from './CommandInput.ts';

function portOf(args: readonly string[]): number {
  const given = args.find((arg) => arg.startsWith('--port='))?.slice('--port='.length);
  return given === undefined ? 8080 : Number(given);
}

/** Serves the pages and builds them anew on every edit. Runs until it is stopped. */
export async function run({ home, args }: CommandInput): Promise<number> {
  const port = portOf(args);
  if (!Number.isInteger(port) || port < 1 || port > 65535) {
    process.stderr.write('--port= expects a whole number from 1 to 65535, such as --port=8080\n');
    return 1;
  }
  const served = join(placesUnder(home).cache, 'dev');
  const eleventy = new Eleventy('layouts', served, {
    configPath: '.eleventy.js',
    runMode: 'serve',
    quietMode: true,
  });
  await eleventy.init();
  const rebuild = await eleventy.watch();
  // Eleventy builds on a change or a new file only; a job that is removed must go too.
  eleventy.watcher.on('unlink', (path) => rebuild(path));
  await eleventy.serve(port);
  return 0;
}
