import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { starterJob } from '../../job/starterJob.ts';
import { placesUnder } from '../places.ts';
import { isSlug } from '../readFolders.ts';
import { writeFile } from '../writeFile.ts';
import type { CommandInput } from './CommandInput.ts';

/** Why a job cannot be started under this name, or nothing. */
function nameProblem(name: string | undefined, jobs: string): string | undefined {
  if (!name) return 'Give the job a name: npm run new -- name-of-the-job';
  if (!isSlug(name))
    return `"${name}" cannot be a job's folder: use small letters, digits and single hyphens, such as boot-room.`;
  if (existsSync(join(jobs, name, 'job.yaml')))
    return `jobs/${name}/job.yaml is there already; it is left as it is.`;
  return undefined;
}

/** Writes a commented job file to fill in. */
export async function run({ home, args }: CommandInput): Promise<number> {
  const { jobs } = placesUnder(home);
  const [name] = args;
  const problem = nameProblem(name, jobs);
  if (problem || !name) {
    process.stderr.write(`${problem}\n`);
    return 1;
  }
  writeFile(join(jobs, name, 'job.yaml'), starterJob(name, 'inches'));
  process.stdout.write(`Wrote jobs/${name}/job.yaml: fill it in, then run npm start -- ${name}\n`);
  return 0;
}
