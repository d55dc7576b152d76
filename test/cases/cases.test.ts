import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { Job } from '../../src/job/Job.ts';
import { readJob } from '../../src/job/readJob.ts';
import { makePacket } from '../../src/packet/makePacket.ts';
import type { Packet } from '../../src/packet/Packet.ts';
import { differences } from './support/differences.ts';
import { looks, tallyOf } from './support/looks.ts';
import { sheetTexts } from './support/sheetTexts.ts';
import { summaryOf } from './support/summaryOf.ts';

/** A case: where its figures come from, what the packet holds, what stands on the sheets, and which looks change it and why. */
interface Case {
  readonly note: string;
  readonly packet: Readonly<Record<string, unknown>>;
  readonly sheets: Readonly<Record<string, readonly string[]>>;
  readonly absent?: Readonly<Record<string, readonly string[]>>;
  readonly looks?: Readonly<Record<string, string>>;
  /** What should stand on the sheets and does not yet, with the reason. */
  readonly shortfalls?: readonly Shortfall[];
}

interface Shortfall {
  readonly why: string;
  readonly sheets: Readonly<Record<string, readonly string[]>>;
}

const folders = readdirSync(import.meta.dirname, { withFileTypes: true })
  .filter((entry) => entry.isDirectory() && entry.name !== 'support')
  .map(({ name }) => name);

const fileOf = (name: string, file: string) => readFileSync(join(import.meta.dirname, name, file), 'utf8');

function jobOf(name: string): Job {
  const { job, problems } = readJob(fileOf(name, 'job.yaml'), 'job.yaml', name);
  if (!job) throw new Error(JSON.stringify(problems));
  return job;
}

function packetOf(job: Job): Packet {
  const made = makePacket(job);
  if ('problems' in made) throw new Error(JSON.stringify(made.problems));
  return made.packet;
}

describe.each(folders)('%s', (name) => {
  const expected: Case = JSON.parse(fileOf(name, 'expected.json'));
  const job = jobOf(name);
  const packet = packetOf(job);
  const sheets = sheetTexts(packet);

  test(`the packet (${expected.note})`, () => {
    expect(differences(summaryOf(packet), expected.packet)).toEqual([]);
  });

  test.each(Object.entries(expected.sheets))('the sheet %s', (sheet, texts) => {
    for (const text of texts) expect(sheets[sheet]).toContain(text);
    for (const text of expected.absent?.[sheet] ?? []) expect(sheets[sheet]).not.toContain(text);
  });

  test('every sheet is said in full', () => {
    expect(Object.values(sheets).join('\n')).not.toMatch(/undefined|NaN|\[object/);
  });

  test('every row adds up, exact and as printed', () => {
    for (const { terms } of packet.surfaces.flatMap(({ rows }) => rows)) {
      const sum = (of: 'exact' | 'saw') => terms.reduce((total, term) => total + term[of], 0);
      expect(sum('saw')).toBe(sum('exact'));
    }
  });

  const same = Object.keys(looks).filter((look) => !(look in (expected.looks ?? {})));
  test.each(same)('is the same %s', (look) => {
    expect(tallyOf(packetOf(looks[look]!(job)))).toEqual(tallyOf(packet));
  });

  test.each((expected.shortfalls ?? []).map((one) => [one.why, one] as const))(
    'falls short: %s',
    (_, one) => {
      for (const [sheet, texts] of Object.entries(one.sheets))
        for (const text of texts) expect(sheets[sheet]).not.toContain(text);
    },
  );

  // A look that changes something stays in the case with its reason until it no longer does.
  test.each(Object.entries(expected.looks ?? {}))('is not the same %s: %s', (look) => {
    expect(tallyOf(packetOf(looks[look]!(job)))).not.toEqual(tallyOf(packet));
  });
});
