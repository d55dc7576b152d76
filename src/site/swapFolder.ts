import { existsSync, mkdirSync, renameSync, rmSync } from 'node:fs';
import { dirname } from 'node:path';

/** Puts a finished folder or file in the place of an old one; the old one goes only when the new one stands. */
export function swapFolder(fresh: string, place: string, aside: string): void {
  mkdirSync(dirname(place), { recursive: true });
  mkdirSync(dirname(aside), { recursive: true });
  rmSync(aside, { recursive: true, force: true });
  if (existsSync(place)) renameSync(place, aside);
  try {
    renameSync(fresh, place);
  } catch (error) {
    if (existsSync(aside)) renameSync(aside, place);
    throw error;
  }
  rmSync(aside, { recursive: true, force: true });
}
