import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { readJob } from '../../src/job/readJob.ts';
import { startWish } from '../../src/job/values/startWish.ts';
import { makePacket } from '../../src/packet/makePacket.ts';
import { makeSheets } from '../../src/sheets/makeSheets.ts';
import { startAsWish } from '../../src/sheets/startAsWish.ts';
import { startLine } from '../../src/sheets/startLine.ts';
import { demoTexts, words } from './demos.ts';

const { job } = readJob(demoTexts['rowan-bath']!, 'job.yaml', 'rowan-bath');
const whole = makePacket(job!, { curve: true });
if ('problems' in whole) throw new Error(JSON.stringify(whole.problems));
const made = words.languages.map((lang) => {
  const { packet } = whole;
  const print = { ...packet.spec.print, crew: [lang], owner: lang };
  const spoken = { ...packet, spec: { ...packet.spec, print } };
  return { lang, packet, sheets: makeSheets(spoken, words) };
});
type Made = (typeof made)[number];
const dataOf = ({ sheets }: Made, template: string) =>
  sheets.find((sheet) => sheet.template === template)?.data as Record<string, unknown> | undefined;

describe.each(made)('the starts told in $lang', (one) => {
  const curve = dataOf(one, 'starts-curve') as {
    wishes: string[];
    rows: { name: string; values: string[] }[];
  };

  test('are lines that the job file takes as they stand', () => {
    const lines = curve.wishes.filter((wish) => wish !== '');
    expect(lines.length).toBeGreaterThan(0);
    for (const line of lines) {
      const { start } = parse(line) as { start: Record<string, string> };
      for (const wish of Object.values(start)) expect(startWish.read(wish), line).toMatchObject({ ok: true });
    }
  });

  test('count fence settings as the saw list has them', () => {
    const { zones } = dataOf(one, 'saw-list') as {
      zones: {
        fences: { setting: unknown; lines: { next: unknown[] }[] }[];
        marked: { next: unknown[] }[];
      }[];
    };
    const all = zones.flatMap(({ fences, marked }) => [
      ...fences.flatMap(({ setting, lines }) => [setting, ...lines.flatMap(({ next }) => next)]),
      ...marked.flatMap(({ next }) => next),
    ]);
    const name = words.say(one.lang)('sheet.starts-curve.fences');
    const told = curve.rows.find((row) => row.name === name)!.values[0];
    expect(told).toBe(String(new Set(all.map((setting) => JSON.stringify(setting))).size));
  });
});

test('a start of a broken millimeter is written with the point that the job file wants', () => {
  const { packet } = made[0]!;
  const print = { ...packet.spec.print, system: 'mm', step: 160 } as const;
  const own = { ...packet, spec: { ...packet.spec, print } };
  const wishes = packet.surfaces[0]!.curve!.map(({ candidate }) => startAsWish({ packet: own }, candidate));
  expect(wishes.join()).toMatch(/cut of \d+\.5 mm at/);
  for (const wish of wishes.filter(Boolean))
    for (const one of Object.values(parse(startLine(wish)).start))
      expect(startWish.read(one), wish).toMatchObject({ ok: true });
});
