import { join } from 'node:path';
import { core } from '../Core.ts';
import { packetOf } from '../packetOf.ts';
import { placesUnder } from '../places.ts';
import { readFolders } from '../readFolders.ts';
import { readWords } from '../words.ts';
import type { CommandInput } from './CommandInput.ts';
import { unknownNames } from './unknownNames.ts';

/** Reads the job files and reports their problems; writes nothing. */
export async function run({ home, args }: CommandInput): Promise<number> {
  const places = placesUnder(home);
  const folders = readFolders(places.jobs);
  const unknown = unknownNames(args, folders);
  const words = readWords(join(places.layouts, 'words'));
  const asked = folders.filter((folder) => args.length === 0 || args.includes(folder.slug));
  const problems = [...unknown, ...asked.flatMap((folder) => packetOf(folder, { core, words }).problems)];
  for (const line of problems) process.stderr.write(`${line}\n`);
  const count = asked.length === 1 ? '1 job' : `${asked.length} jobs`;
  if (problems.length === 0) process.stdout.write(`${count} read, no problem\n`);
  return problems.length > 0 ? 1 : 0;
}
