import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { readJob } from '../../src/job/readJob.ts';
import { makePacket } from '../../src/packet/makePacket.ts';
import type { Packet } from '../../src/packet/Packet.ts';
import { makeSheets } from '../../src/sheets/makeSheets.ts';
import { noteLines } from '../../src/site/noteLines.ts';
import { readWords } from '../../src/site/words.ts';
import { languages, ROOT } from './catalogues.ts';

const JOBS = join(ROOT, 'jobs');
const words = readWords(join(ROOT, 'layouts', 'words'));

function packetOf(slug: string): Packet {
  const { job } = readJob(readFileSync(join(JOBS, slug, 'job.yaml'), 'utf8'), 'job.yaml', slug);
  const made = makePacket(job!);
  if ('problems' in made) throw new Error(JSON.stringify(made.problems));
  return made.packet;
}

/** A packet for a crew and an owner of one language. */
const spoken = (packet: Packet, lang: string): Packet => ({
  ...packet,
  spec: { ...packet.spec, print: { ...packet.spec.print, crew: [lang], owner: lang } },
});

describe.each(readdirSync(JOBS))('the sheets of %s', (slug) => {
  const packet = packetOf(slug);

  test.each(languages)('can be said in %s, with every figure', (lang) => {
    expect(JSON.stringify(makeSheets(spoken(packet, lang), words))).not.toMatch(/undefined|NaN|\[object/);
  });

  test.each(languages)('and its notes in %s', (lang) => {
    for (const { code } of packet.notes) expect(words.has(lang, code), code).toBe(true);
    for (const { text } of noteLines(packet, words, lang)) expect(text).not.toMatch(/undefined|NaN|[{}]/);
  });
});
