import type { Problem } from '../job/Problem.ts';
import { placeProblems } from '../job/placeProblems.ts';
import type { Packet } from '../packet/Packet.ts';
import type { Core } from './Core.ts';
import { keptPacket } from './keptPacket.ts';
import { withEnglish } from './noteLines.ts';
import { problemLine } from './problemLine.ts';
import { isSlug, type JobFolder } from './readFolders.ts';
import type { Words } from './words.ts';

/** Language of pages and lines that belong to no job. */
export const siteLanguage = 'en';

/** A packet, unless the job file gives none; and every problem as a ready line. */
export interface Made {
  readonly packet?: Packet;
  readonly problems: readonly string[];
}

interface Making {
  readonly core: Pick<Core, 'readJob' | 'makePacket'>;
  readonly words: Words;
}

/** An error that the program did not foresee is a fault of ours and says so. */
export function errorLines(error: unknown, file: string, words: Words): readonly string[] {
  const message = error instanceof Error ? error.message : String(error);
  return [words.say(siteLanguage)('site.problem.broken', { file, message })];
}

function makeOrThrow({ slug, text, file, folder }: JobFolder, { core, words }: Making): Made {
  if (!isSlug(slug)) return { problems: [words.say(siteLanguage)('site.problem.slug', { file, slug })] };
  const kept = keptPacket(folder);
  const { job, problems } = core.readJob(text, file);
  const lines = (found: readonly Problem[]) =>
    placeProblems(found, text, file).map((problem) => problemLine(problem, words, siteLanguage));
  if (!job || problems.length > 0) return { problems: lines(problems) };
  if (job.status !== 'finished' || !kept) {
    const made = core.makePacket(job, { curve: true });
    return 'packet' in made
      ? { packet: withEnglish(made.packet, words), problems: [] }
      : { problems: lines(made.problems) };
  }
  if (kept.job.revision === job.revision.letter) return { packet: kept, problems: [] };
  const figures = {
    file,
    kept: kept.job.revision,
    now: job.revision.letter,
    packet: `jobs/${slug}/packet.json`,
  };
  return { packet: kept, problems: [words.say(siteLanguage)('site.problem.keptRevision', figures)] };
}

/** The packet of a job: made from its file, or the one that a finished job keeps. Never throws. */
export function packetOf(folder: JobFolder, making: Making): Made {
  try {
    return makeOrThrow(folder, making);
  } catch (error) {
    return { problems: errorLines(error, folder.file, making.words) };
  }
}
