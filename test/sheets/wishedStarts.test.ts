import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { readJob } from '../../src/job/readJob.ts';
import { makePacket } from '../../src/packet/makePacket.ts';
import { alternatives } from '../../src/sheets/alternatives.ts';
import { sheetContext } from '../../src/sheets/SheetContext.ts';
import { sayKind } from '../../src/sheets/sayKind.ts';
import { readWords } from '../../src/site/words.ts';

const words = readWords(join(import.meta.dirname, '../../layouts/words'));

/** Why the chosen start stands where it does, of a small floor with one wish across, told in each language. */
function reasonsOf(wish: string): { lang: string; reasons: readonly string[] }[] {
  const file = `
title: One wish
revision: {letter: A, date: 2027-03-01}
tile: {field: {read: 11 7/8 in x 11 7/8 in}}
joint: 1/8 in
floor:
  walls: {A-B: 10 ft, B-C: 8 ft, C-D: 10 ft, D-A: 8 ft}
  doorways:
    hall: {in: A-B, from A: 30 in, clear: 28 in, wall: 4 1/2 in, door line: 2 1/4 in, beyond: wood}
  obstacles:
    sink cabinet: {rectangle: 24 in x 20 in, from C-D: 0 in, from B-C: 0 in}
  start: {across: ${wish}}
`;
  const { job, problems } = readJob(file, 'job.yaml');
  if (!job) throw new Error(JSON.stringify(problems));
  const made = makePacket(job);
  if ('problems' in made) throw new Error(JSON.stringify(made.problems));
  return words.languages.map((lang) => {
    const context = sheetContext(made.packet, { lang, say: words.say(lang) });
    const { surfaces } = alternatives.make(context)[0]!.data as {
      surfaces: readonly { rows: readonly { reasons: readonly string[] }[] }[];
    };
    return { lang, reasons: surfaces[0]!.rows[0]!.reasons };
  });
}

describe.each([
  ['tile on sink cabinet', 'edge.face', 'sink cabinet'],
  ['joint on hall', 'edge.line', 'hall'],
  ['cut of 6 in at C-D', '', 'C-D'],
])('a start for which the job file asks %s', (wish, edge, name) => {
  test.each(reasonsOf(wish))('names the edge in the words of $lang, and not as the job file does', (one) => {
    const told = one.reasons.join('\n');
    expect(told).toContain(
      edge === '' ? name : words.say(one.lang)(edge, { name: sayKind(words.say(one.lang), name) }),
    );
    expect(told).not.toMatch(/\b(?:tile|joint|cut) (?:sink cabinet|hall|C-D)/);
    expect(told).not.toContain(wish);
  });
});
