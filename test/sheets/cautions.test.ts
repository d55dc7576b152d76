import { describe, expect, test } from 'vitest';
import type { Packet } from '../../src/packet/Packet.ts';
import { cautiousSay, isCaution, unreadNote } from '../../src/sheets/cautiousSay.ts';
import { makeSheets } from '../../src/sheets/makeSheets.ts';
import { wordsOf } from '../words/catalogues.ts';
import { demos, words } from './demos.ts';

/** A language that nobody has read yet whose own language it is, and one that was read. */
const UNREAD = words.languages.find((lang) => words.say(lang)('language.reviewed') !== 'true') ?? '';
const READ = 'es';

const english = wordsOf('en');
const cautions = Object.keys(english).filter(isCaution);

/** What a caution says before the first figure in it. */
const beginning = (lang: string, code: string) => words.message(lang, code).split('{')[0]!;
const countOf = (text: string, part: string) => text.split(part).length - 1;

/** The texts of each sheet of a packet for a crew and an owner of these languages. */
function textsFor(packet: Packet, crew: readonly string[], owner: string) {
  const print = { ...packet.spec.print, crew, owner };
  return makeSheets({ ...packet, spec: { ...packet.spec, print } }, words).map((sheet) => ({
    name: sheet.name,
    unread: sheet.unread ?? '',
    text: JSON.stringify(sheet.data).replaceAll('\\"', '"'),
  }));
}

/** How often each caution stands on a sheet in one language and in English. */
function printed(packet: Packet, lang: string, crew: readonly string[], owner: string) {
  return textsFor(packet, crew, owner).flatMap(({ name, text }) =>
    cautions.map((code) => ({
      at: `${name}: ${code}`,
      own: countOf(text, beginning(lang, code)),
      inEnglish: countOf(text, beginning('en', code)),
    })),
  );
}

/** The demo in whose house the most can hurt. */
const dangers = ({ packet }: (typeof demos)[number]) =>
  packet.limits.filter(({ rule, pass }) => rule.startsWith('house.') && !pass).length;
const { packet } = [...demos].sort((a, b) => dangers(b) - dangers(a))[0]!;

describe('a caution', () => {
  test.each([[[UNREAD]], [[UNREAD, 'en']]])('for a crew of %j stands in English too, once', (crew) => {
    const found = printed(packet, UNREAD, crew, UNREAD);
    expect(found.filter(({ own }) => own > 0).length).toBeGreaterThan(15);
    expect(found.filter(({ own, inEnglish }) => own !== inEnglish)).toEqual([]);
  });

  test('stands in English too where the unread language is the second', () => {
    const found = printed(packet, UNREAD, [READ, UNREAD], READ);
    expect(found.filter(({ own }) => own > 0).length).toBeGreaterThan(15);
    expect(found.filter(({ own, inEnglish }) => own !== inEnglish)).toEqual([]);
    const once = printed(packet, UNREAD, ['en', UNREAD], READ);
    expect(
      once.filter(({ at, own, inEnglish }) => at.startsWith('job-sheet: short') && own !== inEnglish),
    ).toEqual([]);
  });

  test('stands in its own language alone where that was read', () => {
    expect(printed(packet, READ, [READ], READ).filter(({ inEnglish }) => inEnglish > 0)).toEqual([]);
  });

  test('each sheet in an unread language says so at its foot, and no other', () => {
    for (const { unread } of textsFor(packet, [UNREAD, 'en'], UNREAD)) {
      expect(unread).toContain(words.say(UNREAD)('language.unread'));
      expect(unread).toContain('not yet read by a native speaker');
    }
    expect(textsFor(packet, ['en', READ], READ).filter(({ unread }) => unread !== '')).toEqual([]);
  });
});

test('a template says a caution of an unread language in English too', () => {
  const code = 'sheet.base-sheet.note';
  expect(cautiousSay(UNREAD, words)(code)).toBe(`${words.say(UNREAD)(code)} · ${words.say('en')(code)}`);
  expect(cautiousSay(READ, words)(code)).toBe(words.say(READ)(code));
  expect(unreadNote(['en', READ], words)).toBe('');
});

/** What hurts people, in the words of the trade. */
const HARM = /asbestos|\blead\b|lead-safe|silica|\bdust\b|GFCI|\bburns?\b|lungs|\bsharp\b|fumes|allergic/i;

/** Words of harm that warn nobody: each with its reason. */
const NO_WARNING: Readonly<Record<string, string>> = {
  'ask.power': 'a question',
  'calendar.lift': 'what is done once the stop before it, a caution of its own, is passed',
  'limit.house.asbestos': 'the head of a caution',
  'limit.house.lead': 'the head of a caution',
  'problem.walkBroken.found': 'a walk leads somewhere',
};

test('what speaks of harm is a caution', () => {
  const speaking = Object.keys(english).filter((code) => HARM.test(english[code]!));
  expect(speaking.length).toBeGreaterThan(15);
  expect(speaking.filter((code) => !isCaution(code) && !(code in NO_WARNING))).toEqual([]);
  expect(Object.keys(NO_WARNING).filter((code) => !speaking.includes(code))).toEqual([]);
});

describe('what comes up', () => {
  const codesOf = (slug: string) =>
    demos.find((one) => one.slug === slug)!.packet.care.cautions.map(({ code }) => code);
  const jobSheetOf = (slug: string) =>
    JSON.stringify(
      demos.find((one) => one.slug === slug)!.sheets.find(({ template }) => template === 'job-sheet')!.data,
    );
  const gateOf = (slug: string) => {
    const { sheets } = demos.find((one) => one.slug === slug)!;
    const { gates, stops } = sheets.find(({ template }) => template === 'job-sheet')!.data as Record<
      'gates' | 'stops',
      readonly { readonly what: string; readonly note: string }[]
    >;
    return [...stops, ...gates].find(({ what }) => what.startsWith('Comes up'))?.note ?? '';
  };

  test('old tile breaks into chips and dust: eyes, ears, mask, and no word of tack strip', () => {
    expect(codesOf('linden-entry')).toContain('caution.tearing');
    expect(codesOf('linden-entry')).not.toContain('caution.strips');
    expect(jobSheetOf('linden-entry')).toContain('Old tile off: eyes, ears, mask. Dust wet or by vacuum.');
    expect(gateOf('linden-entry')).toBe('Patch what it leaves.');
  });

  test('sheet goods leave tack strip, nails and staples, and no dust of stone', () => {
    expect(codesOf('rowan-bath')).toContain('caution.strips');
    expect(codesOf('rowan-bath')).not.toContain('caution.tearing');
  });

  test('nothing is said of it where nothing comes up', () => {
    for (const slug of ['almond-hall', 'quarry-kitchen']) {
      expect(codesOf(slug)).not.toContain('caution.tearing');
      expect(codesOf(slug)).not.toContain('caution.strips');
    }
    for (const lang of ['en', 'es', 'pt'])
      expect(words.message(lang, 'caution.edges')).not.toMatch(/strip|clavos|pregos/);
  });
});
