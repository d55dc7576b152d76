import { existsSync, readdirSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';
import type { Places } from './places.ts';

const day = 86_400_000;

function removeOlder(folder: string, days: number, wanted: (name: string) => boolean): void {
  if (!existsSync(folder)) return;
  const old = Date.now() - days * day;
  for (const name of readdirSync(folder).filter(wanted)) {
    const file = join(folder, name);
    const found = statSync(file, { throwIfNoEntry: false });
    if (found && found.mtimeMs < old) rmSync(file, { recursive: true, force: true });
  }
}

/** Removes what builds have left: PDFs that were not used for a month, and folders of builds that were stopped. */
export function sweepCache({ cache, pdfs }: Pick<Places, 'cache' | 'pdfs'>): void {
  removeOlder(pdfs, 30, (name) => name.endsWith('.pdf'));
  removeOlder(cache, 1, (name) => name.startsWith('site-'));
}
