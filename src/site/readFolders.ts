import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/** A job folder as it lies on disk. */
export interface JobFolder {
  readonly slug: string;
  readonly folder: string;
  /** The job file's path, as problems name it: the same on every machine. */
  readonly file: string;
  readonly text: string;
}

/**
 * Whether a folder name can be a job's: small letters, digits and single hyphens, so that it is the same in every
 * file system and needs no escaping in a link. `assets` is taken by the site itself.
 *
 * @example
 * isSlug('boot-room') //=> true
 */
export function isSlug(name: string): boolean {
  return /^[a-z0-9]+(-[a-z0-9]+)*$/.test(name) && name.length <= 64 && name !== 'assets';
}

/** Every folder of `jobs` that holds a job file, by name. */
export function readFolders(jobs: string): readonly JobFolder[] {
  if (!existsSync(jobs)) return [];
  return readdirSync(jobs, { withFileTypes: true })
    .filter((entry) => entry.isDirectory() && existsSync(join(jobs, entry.name, 'job.yaml')))
    .map((entry) => {
      const folder = join(jobs, entry.name);
      const text = readFileSync(join(folder, 'job.yaml'), 'utf8');
      return { slug: entry.name, folder, file: `jobs/${entry.name}/job.yaml`, text };
    })
    .sort((a, b) => (a.slug < b.slug ? -1 : 1));
}
