import { createHash, type Hash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';

function addFolder(hash: Hash, folder: string, wanted: (name: string) => boolean): void {
  if (!existsSync(folder)) return;
  const names = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter(wanted).sort();
  for (const name of names) {
    const file = join(folder, name);
    if (statSync(file).isFile()) hash.update(`${name}\n`).update(readFileSync(file));
  }
}

/** A fingerprint of every source and of the packages. */
export function sourcesMark(home: string): string {
  const hash = createHash('sha256');
  addFolder(hash, join(home, 'src'), (name) => /\.(ts|mjs|css)$/.test(name));
  return hash.update(readFileSync(join(home, 'package-lock.json'))).digest('hex');
}

/** A fingerprint of all that shapes a page but the job itself: sources, packages, templates, words, styles. */
export function programMark(home: string, layouts: string): string {
  const hash = createHash('sha256').update(sourcesMark(home));
  addFolder(hash, layouts, () => true);
  return hash.digest('hex');
}

/** A fingerprint of a job's folder as a program of that mark builds it. */
export function jobMark(folder: string, program: string): string {
  const hash = createHash('sha256').update(program);
  addFolder(hash, folder, () => true);
  return hash.digest('hex');
}
