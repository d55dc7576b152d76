import { describe, expect, test } from 'vitest';
import { readJob } from '../../src/job/readJob.ts';
import { makePacket } from '../../src/packet/makePacket.ts';
import { defaultLine } from '../../src/sheets/defaultLine.ts';
import { defaultName } from '../../src/sheets/defaultName.ts';
import { defaultValue } from '../../src/sheets/defaultValue.ts';
import { sheetContext } from '../../src/sheets/SheetContext.ts';
import { demos, words } from './demos.ts';

/** A job that leaves out all that may be left out, with each thing that brings defaults of its own. */
const bare = (units: string) => `title: Bare
revision: {date: 2027-05-03}
print: {units: ${units}}
tile:
  field: {name: Plain, read: [12 in x 12 in], box: {pieces: 10}}
  dot: {name: Dot, read: [4 in x 4 in]}
joint: 1/8 in
floors:
  hall:
    walls: {A-B: 120 in, B-C: 96 in, C-D: 120 in, D-A: 96 in}
    doorways:
      street: {in: A-B, from A: 20 in, clear: 30 in}
    pattern: {running: 1/3}
    border: [{tile: field}]
`;
const madeOf = (text: string) => {
  const { job, problems } = readJob(text, 'job.yaml', 'bare');
  if (!job) throw new Error(JSON.stringify(problems));
  const made = makePacket(job);
  if ('problems' in made) throw new Error(JSON.stringify(made.problems));
  return made.packet;
};
const packets = [
  ...demos.map(({ packet }) => packet),
  ...['inches', 'mm'].map((units) => madeOf(bare(units))),
];
const linesIn = (lang: string) =>
  packets.flatMap((packet) => {
    const context = sheetContext(packet, { lang, say: words.say(lang) });
    return packet.defaults.map((one) => ({
      ...defaultLine(context, one),
      raw: String(one.figures.value),
      system: packet.spec.print.system,
    }));
  });

describe.each(words.languages)('what was assumed, in %s', (lang) => {
  const lines = linesIn(lang);

  test('has a name for every setting, and never its path', () => {
    expect(lines.length).toBeGreaterThan(200);
    expect(lines.filter(({ path }) => !defaultName(path)).map(({ path }) => path)).toEqual([]);
    expect(
      lines.filter(({ name }) => /\bundefined|NaN|\w\.\w|[{}]/.test(name)).map(({ name }) => name),
    ).toEqual([]);
  });

  test('says that the share which the owner keeps is one of all pieces, of which more come out of a tile', () => {
    const kept = lines.filter(({ path }) => path.endsWith('waste.keep'));
    expect(kept.length).toBeGreaterThan(0);
    for (const { name } of kept) expect(name).toMatch(/pieces|piezas|peças/);
  });

  test('keeps the path by which the estimator finds it', () => {
    expect(lines.map(({ path }) => path)).toEqual(
      packets.flatMap(({ defaults }) => defaults.map(({ path }) => path)),
    );
  });

  test('has no unit but those of the print', () => {
    const inches = /\d (?:in|ft|lb|sq ft|°F|fl oz|qt)\b|°F/;
    const metric = /\d (?:mm|kg|m2|m²|ml|L|C)\b|°C|kg\/L/;
    const strange = lines.filter(({ value, system }) => (system === 'mm' ? inches : metric).test(value));
    expect(strange.map(({ name, value }) => `${name}: ${value}`)).toEqual([]);
  });

  test('shows no map and no word as the job file has them', () => {
    const raw = /[{}]|\b(?:per litre|mon-fri|m2)\b|^\d+ [CF]$/;
    expect(lines.filter(({ value }) => raw.test(value)).map(({ value }) => value)).toEqual([]);
  });
});

describe.each(['es', 'pt'])('words for values in %s', (lang) => {
  // A value of English letters that is neither a unit nor a name stands there in another word.
  test('are not those of the job file', () => {
    const same = new Set(['no', 'A', 'Plain', 'a4', 'A4']);
    const left = linesIn(lang).filter(
      ({ raw, value }) => /^[a-z][a-z -]+$/i.test(raw) && value === raw && !same.has(raw),
    );
    expect(left.map(({ name, value }) => `${name}: ${value}`)).toEqual([]);
  });
});

test('a value is told in the units of the print', () => {
  const context = (slug: string, lang: string) =>
    sheetContext(demos.find((one) => one.slug === slug)!.packet, { lang, say: words.say(lang) });
  const [bath, hall] = [context('rowan-bath', 'en'), context('almond-hall', 'es')];
  // By hand: 2 mm are 0.0787 in, to the nearest 64th 5/64; 1.6 kg a litre are 1.6 × 3.785411784 / 0.45359237 = 13.353 lb a gallon, told to a hundredth.
  expect(defaultValue(bath, '2 mm')).toBe('5/64 in');
  expect(defaultValue(bath, '1.6 kg per litre')).toBe('13.35 lb/gal');
  expect(defaultValue(hall, '1.6 kg per litre')).toBe('1,6 kg/L');
  expect(defaultValue(hall, '21 C')).toBe('21 °C');
  expect(defaultValue(hall, '20 m2')).toBe('20 m²');
  expect(defaultValue(hall, '1.1 m2 an hour')).toBe('1,1 m² por hora');
  expect(defaultValue(hall, '{straight: 3 %, u: 15 %}')).toBe('rectos 3 %, en U 15 %');
  expect(defaultValue(hall, '4-6 days')).toBe('4–6 días');
  expect(defaultValue(hall, '6 x 10 x 6 mm')).toBe('6 × 10 × 6 mm');
});
