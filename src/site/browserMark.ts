import { statSync } from 'node:fs';

/** Tells one installed browser from another, and from its next version, without starting it. */
export function browserMark(path: string): string {
  const { size, mtimeMs } = statSync(path);
  return `${path} ${size} ${mtimeMs}`;
}
