import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { buildSite } from '../../../src/site/buildSite.ts';
import { placesUnder } from '../../../src/site/places.ts';
import { programMark } from '../../../src/site/programMark.ts';
import { writeFile } from '../../../src/site/writeFile.ts';
import { browserPath, home } from './browserPath.ts';
import { type BuiltSite, builtSite, demoJobs } from './buildJobs.ts';

/** Longer than any build takes: a lock that is older was left by a run that was stopped. */
const forgottenMs = 180_000;

/** Does some work while no other test process does the same. */
async function alone<T>(lock: string, work: () => Promise<T>): Promise<T> {
  mkdirSync(join(lock, '..'), { recursive: true });
  for (;;) {
    try {
      mkdirSync(lock);
      break;
    } catch {
      const made = statSync(lock, { throwIfNoEntry: false });
      if (made && Date.now() - made.mtimeMs > forgottenMs) rmSync(lock, { recursive: true, force: true });
      await pause(100);
    }
  }
  try {
    return await work();
  } finally {
    rmSync(lock, { recursive: true, force: true });
  }
}

/**
 * The demo jobs from their job files, with PDFs, built once for all tests that only look at them. They are built anew
 * when a source, a template or a job file has changed.
 */
export async function demoSite(): Promise<BuiltSite> {
  const browser = browserPath();
  const jobs = demoJobs();
  const program = programMark(home, join(home, 'layouts'));
  const mark = createHash('sha256')
    .update(`${program} ${browser} ${JSON.stringify(jobs)}`)
    .digest('hex');
  const root = join(home, '.cache', 'demos', mark);
  const places = { ...placesUnder(home, root), pdfs: placesUnder(home).pdfs };
  const whole = join(root, 'whole');
  await alone(join(home, '.cache', 'demos.lock'), async () => {
    if (existsSync(whole)) return;
    rmSync(join(home, '.cache', 'demos'), { recursive: true, force: true });
    for (const [slug, text] of Object.entries(jobs)) writeFile(join(places.jobs, slug, 'job.yaml'), text);
    const { problems } = await buildSite(places, { names: [], browser, progress: () => undefined });
    if (problems.length > 0) throw new Error(problems.join('\n'));
    writeFile(whole, mark);
  });
  return builtSite(places.output, Object.keys(jobs));
}
