import type { JobFolder } from '../readFolders.ts';

/** A line for each name on the command line that is no job. */
export function unknownNames(names: readonly string[], folders: readonly JobFolder[]): readonly string[] {
  const known = folders.map((folder) => folder.slug);
  return names
    .filter((name) => !known.includes(name))
    .map((name) => `There is no job "${name}" in jobs/. There are: ${known.join(', ') || 'none'}.`);
}
