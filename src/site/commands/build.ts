import { join, relative } from 'node:path';
import { beginBuild } from '../beginBuild.ts';
import { makeProgress } from '../makeProgress.ts';
import { placesUnder } from '../places.ts';
import { readFolders } from '../readFolders.ts';
import type { CommandInput } from './CommandInput.ts';
import { unknownNames } from './unknownNames.ts';

function noBrowserLine(asked: string | undefined): string {
  return asked
    ? `No PDFs: PACKET_BROWSER is "${asked}", which is no program. Set it to the path of a Chromium or Chrome, and build again.`
    : 'No PDFs: no Chromium or Chrome was found. Install one, or set PACKET_BROWSER to the path of one, and build again.';
}

/** Builds all jobs or the named ones. */
export async function run({ home, browser, args }: CommandInput): Promise<number> {
  const places = placesUnder(home);
  const unknown = unknownNames(args, readFolders(places.jobs));
  for (const line of unknown) process.stderr.write(`${line}\n`);
  if (unknown.length > 0) return 1;
  const { jobs, problems } = await beginBuild(places, { names: args, browser, progress: makeProgress() });
  for (const line of problems) process.stderr.write(`${line}\n`);
  if (!browser) {
    process.stderr.write(`${noBrowserLine(process.env.PACKET_BROWSER)}\n`);
  }
  const count = jobs.length === 1 ? '1 job' : `${jobs.length} jobs`;
  process.stdout.write(`${count}: open ${relative(process.cwd(), join(places.output, 'index.html'))}\n`);
  return problems.length > 0 || !browser ? 1 : 0;
}
