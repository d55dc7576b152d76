import { mkdtempSync, readdirSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Packet } from '../../../src/packet/Packet.ts';
import { buildSite } from '../../../src/site/buildSite.ts';
import { placesUnder } from '../../../src/site/places.ts';
import { readFolders } from '../../../src/site/readFolders.ts';
import { writeFile } from '../../../src/site/writeFile.ts';
import { home } from './browserPath.ts';

export interface BuiltJob {
  readonly slug: string;
  readonly packet: Packet;
}

/** What stands in a folder after a build. */
export interface BuiltSite {
  readonly output: string;
  readonly jobs: readonly BuiltJob[];
  /** Every HTML page, as a path under the output. */
  readonly pages: readonly string[];
}

/** The demo jobs as texts: slug → job file. */
export function demoJobs(): Readonly<Record<string, string>> {
  return Object.fromEntries(readFolders(join(home, 'jobs')).map(({ slug, text }) => [slug, text]));
}

/** What stands in a folder after these jobs were built there. */
export function builtSite(output: string, slugs: readonly string[]): BuiltSite {
  const packetOf = (slug: string): Packet =>
    JSON.parse(readFileSync(join(output, slug, 'packet.json'), 'utf8'));
  const files = readdirSync(output, { recursive: true, encoding: 'utf8' });
  return {
    output,
    jobs: slugs.map((slug) => ({ slug, packet: packetOf(slug) })),
    pages: files.filter((name) => name.endsWith('.html')).sort(),
  };
}

/** Builds jobs, slug → job file, in a folder of their own; with PDFs where a browser is given. Throws at any problem. */
export async function buildJobs(
  texts: Readonly<Record<string, string>>,
  browser?: string,
): Promise<BuiltSite> {
  const root = mkdtempSync(join(tmpdir(), 'packet-pages-'));
  for (const [slug, text] of Object.entries(texts)) writeFile(join(root, 'jobs', slug, 'job.yaml'), text);
  // What the program itself has printed from the same page, with the same browser and styles, is not printed again.
  const places = { ...placesUnder(home, root), pdfs: placesUnder(home).pdfs };
  const { problems } = await buildSite(places, { names: [], browser, progress: () => undefined });
  if (problems.length > 0) throw new Error(problems.join('\n'));
  return builtSite(places.output, Object.keys(texts));
}
