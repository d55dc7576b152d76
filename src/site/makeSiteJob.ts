import { join } from 'node:path';
import type { Problem } from '../job/Problem.ts';
import type { Packet } from '../packet/Packet.ts';
import { bundlesOf } from './bundlesOf.ts';
import { jobCard } from './jobCard.ts';
import { keptPacket } from './keptPacket.ts';
import type { Core } from './loadCore.ts';
import { problemLine } from './problemLine.ts';
import { isSlug, type JobFolder } from './readFolders.ts';
import type { SiteJob } from './SiteJob.ts';
import type { Words } from './words.ts';

/** Language of pages that belong to no job. */
export const siteLanguage = 'en';

/** What the making of a site job needs beside the job folder. */
export interface Making {
  readonly core: Core;
  readonly words: Words;
  readonly output: string;
}

interface Made {
  readonly packet?: Packet;
  readonly problems: readonly string[];
}

/** An error of the core may carry problems with their place; any other is a fault of ours and says so. */
function errorLines(error: unknown, file: string, words: Words): readonly string[] {
  const { problems } = error as { problems?: readonly Problem[] };
  if (problems) return problems.map((problem) => problemLine({ file, ...problem }, words, siteLanguage));
  const message = error instanceof Error ? error.message : String(error);
  return [words.say(siteLanguage)('site.problem.broken', { file, message })];
}

function packetOf({ slug, text, file, folder }: JobFolder, { core, words }: Making): Made {
  if (!isSlug(slug)) return { problems: [words.say(siteLanguage)('site.problem.slug', { file, slug })] };
  const kept = keptPacket(folder);
  const { job, problems } = core.readJob(text, file);
  const lines = problems.map((problem) => problemLine({ file, ...problem }, words, siteLanguage));
  if (!job || problems.length > 0) return { problems: lines };
  if (job.status !== 'finished' || !kept) return { packet: core.makePacket(job), problems: [] };
  const figures = {
    file,
    kept: kept.job.revision,
    now: job.revision.letter,
    packet: `jobs/${slug}/packet.json`,
  };
  const other = kept.job.revision !== job.revision.letter;
  return {
    packet: kept,
    problems: other ? [words.say(siteLanguage)('site.problem.keptRevision', figures)] : [],
  };
}

function viewOf(slug: string, packet: Packet, { core, words }: Making): Omit<SiteJob, 'problems' | 'stale'> {
  const sheets = core.makeSheets(packet, words);
  const lang = packet.spec.print.crew[0] ?? siteLanguage;
  return {
    slug,
    lang,
    card: jobCard(packet),
    sheets,
    bundles: bundlesOf(sheets),
    notes: packet.notes,
    pages: 'write',
    packet,
  };
}

/** When the job file gives nothing, what was built last is shown again; when even that cannot be read, it is left as it is. */
function fromLastGood(slug: string, problems: readonly string[], folder: string, making: Making): SiteJob {
  const none = { slug, lang: siteLanguage, sheets: [], bundles: [], notes: [], problems };
  if (!isSlug(slug)) return { ...none, stale: false, pages: 'keep' };
  const old = join(making.output, slug);
  const finished = keptPacket(folder);
  const packet = finished?.job.status === 'finished' ? finished : keptPacket(old);
  if (!packet) return { ...none, stale: false, pages: 'write' };
  try {
    return { ...viewOf(slug, packet, making), problems, stale: true };
  } catch {
    return { ...none, card: jobCard(packet), stale: true, pages: 'keep' };
  }
}

/** Makes one job's pages ready. Never throws: what goes wrong is told in its problems. */
export function makeSiteJob(folder: JobFolder, making: Making): SiteJob {
  try {
    const { packet, problems } = packetOf(folder, making);
    if (!packet) return fromLastGood(folder.slug, problems, folder.folder, making);
    return { ...viewOf(folder.slug, packet, making), problems, stale: false };
  } catch (error) {
    const problems = errorLines(error, folder.file, making.words);
    return fromLastGood(folder.slug, problems, folder.folder, making);
  }
}
