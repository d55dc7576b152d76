import { join } from 'node:path';
import { exchangeFiles } from '../exchange/exchangeFiles.ts';
import type { Packet } from '../packet/Packet.ts';
import { bundlesOf } from './bundlesOf.ts';
import type { Core } from './Core.ts';
import { jobCard } from './jobCard.ts';
import { keptPacket } from './keptPacket.ts';
import { noteLines } from './noteLines.ts';
import { errorLines, packetOf, siteLanguage } from './packetOf.ts';
import { isSlug, type JobFolder } from './readFolders.ts';
import type { SiteJob } from './SiteJob.ts';
import type { Words } from './words.ts';

/** What the making of a site job needs beside the job folder. */
export interface Making {
  readonly core: Core;
  readonly words: Words;
  /** Where the last good packets stand. */
  readonly output: string;
}

function viewOf(slug: string, packet: Packet, { core, words }: Making): Omit<SiteJob, 'problems' | 'stale'> {
  const sheets = core.makeSheets(packet, words);
  const lang = packet.spec.print.crew[0] ?? siteLanguage;
  const bundles = bundlesOf(sheets);
  const notes = noteLines(packet, words, lang);
  const saw = core.sawPages(packet, lang, words.say(lang));
  const files = exchangeFiles(packet, words.say(lang));
  return { slug, lang, card: jobCard(packet), sheets, bundles, saw, notes, files, pages: 'write', packet };
}

/** When the job file gives nothing, what was built last is shown again; when even that cannot be read, it is left as it is. */
function fromLastGood({ slug, folder }: JobFolder, problems: readonly string[], making: Making): SiteJob {
  const none = { slug, lang: siteLanguage, sheets: [], bundles: [], notes: [], files: [], problems };
  if (!isSlug(slug)) return { ...none, stale: false, pages: 'keep' };
  const finished = keptPacket(folder);
  const packet = finished?.job.status === 'finished' ? finished : keptPacket(join(making.output, slug));
  if (!packet) return { ...none, stale: false, pages: 'write' };
  try {
    return { ...viewOf(slug, packet, making), problems, stale: true };
  } catch {
    return { ...none, stale: true, pages: 'keep' };
  }
}

function fromFolder(folder: JobFolder, making: Making): SiteJob {
  const { packet, problems } = packetOf(folder, making);
  if (!packet) return fromLastGood(folder, problems, making);
  try {
    return { ...viewOf(folder.slug, packet, making), problems, stale: problems.length > 0 };
  } catch (error) {
    return fromLastGood(folder, [...problems, ...errorLines(error, folder.file, making.words)], making);
  }
}

/** Makes one job's pages ready. Never throws: what goes wrong is told in its problems. */
export function makeSiteJob(folder: JobFolder, making: Making): SiteJob {
  return { ...fromFolder(folder, making), text: folder.text };
}
