import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { readJob } from '../../src/job/readJob.ts';
import { makePacket } from '../../src/packet/makePacket.ts';
import type { Packet } from '../../src/packet/Packet.ts';
import { makeSheets } from '../../src/sheets/makeSheets.ts';
import { readWords } from '../../src/site/words.ts';

const home = join(import.meta.dirname, '../..');

export const words = readWords(join(home, 'layouts/words'));

/** Texts of the demo jobs by their folder. */
export const demoTexts: Readonly<Record<string, string>> = Object.fromEntries(
  readdirSync(join(home, 'jobs')).map((slug) => [
    slug,
    readFileSync(join(home, 'jobs', slug, 'job.yaml'), 'utf8'),
  ]),
);

/** The same job with all its sheets in one language. */
export function inLanguage(text: string, lang: string): string {
  return text.replace(/crew: (\[[^\]]*\]|\w+)/, `crew: ${lang}`).replace(/owner: \w+\}/, `owner: ${lang}}`);
}

function packetOf(slug: string, text: string): Packet {
  const { job, problems } = readJob(text, `jobs/${slug}/job.yaml`, slug);
  if (!job) throw new Error(JSON.stringify(problems));
  const made = makePacket(job);
  if ('problems' in made) throw new Error(JSON.stringify(made.problems));
  return made.packet;
}

/** A job's text as a packet with its sheets, or with those of some kinds. */
export function sheetsOf(slug: string, text: string, kinds?: readonly string[]) {
  const packet = packetOf(slug, text);
  return { slug, packet, sheets: makeSheets(packet, words, kinds) };
}

/** A job as it was before its floor was laid, with sheets of some kinds: a finished one has no sign on its door. */
export function beforeLaid(
  { slug, packet: made }: { slug: string; packet: Packet },
  kinds: readonly string[],
) {
  const packet: Packet = { ...made, job: { ...made.job, status: 'planned' } };
  return { slug, packet, sheets: makeSheets(packet, words, kinds) };
}

const madeOf = new Map<string, ReturnType<typeof sheetsOf>>();

/** All sheets of a job's text, made once: several files ask for the demos in other units and languages. */
export function sheetsOnce(slug: string, text: string) {
  const made = madeOf.get(text) ?? sheetsOf(slug, text);
  madeOf.set(text, made);
  return made;
}

/** Each demo job as a packet with its sheets. */
export const demos = Object.entries(demoTexts).map(([slug, text]) => sheetsOnce(slug, text));
