import { describe, expect, test } from 'vitest';
import { wordsOf } from './catalogues.ts';

/** Messages that hold what they should not, by key. */
const holding = (lang: string, wrong: RegExp): string[] =>
  Object.entries(wordsOf(lang))
    .filter(([, message]) => wrong.test(message))
    .map(([key]) => key);

/** What a job file has in its own spelling, and names of figures and of their choices: no reader's spelling changes them. */
const WRITTEN = /centred between A-B|kg per litre|\{\w+(?:\}|, \w+,)|\w+ (?=\{)/g;

describe('English', () => {
  const british =
    /\b\w*(?:metres?|litres?|colours?|centred?|neighbours?|mitred|grey|levell(?:er|ing)|moulding|labelled|favour|programme)\b/i;

  test('is spelled as in the United States', () => {
    const wrong = Object.entries(wordsOf('en')).filter(([, message]) =>
      british.test(message.replace(WRITTEN, '')),
    );
    expect(wrong.map(([key]) => key)).toEqual([]);
  });

  test('spelled otherwise is found out', () => {
    for (const word of ['millimetres', 'centred', 'colour', "neighbours' ends"])
      expect(word).toMatch(british);
    for (const word of ['millimeters', 'centered', 'color', 'Mitered']) expect(word).not.toMatch(british);
  });
});

describe('Portuguese, of courses and starts,', () => {
  // A course of tile is fiada; a line of readings on a grid is fileira, and tiles laid dry lie em fileira.
  test('has one word for a course', () => {
    const other = holding('pt', /(?<!em )fileira/i).filter(
      (key) => key.startsWith('sheet.') || key.startsWith('taper.'),
    );
    expect(other).toEqual(['sheet.measuring.row', 'sheet.base-sheet.worst']);
  });

  test('sends to the sheet of starts by its title', () => {
    const words = wordsOf('pt');
    const title = words['sheet.alternatives.title']!;
    const sent = Object.values(words).filter((message) => / comparad[ao]s/.test(message));
    expect(sent.length).toBeGreaterThan(2);
    expect(sent.filter((message) => !message.includes(title))).toEqual([]);
  });
});

describe('Spanish', () => {
  // What goes into a joint is rejunte, what stays soft sellante elástico, what soaks in sellador, what holds the tile adhesivo.
  test.each([
    [
      'grout, but where the tally names it with what others call it',
      /lechada|boquilla/i,
      ['material.grout.name'],
    ],
    ['sealant', /sellador(?:es)?[ ,](?:sobre|no|en (?:esa|las) junta)/i],
    ['soft joint', /juntas? blandas?/i],
    ['flatness', /planeidad/i],
    ['mortar, but there too', /mortero/i, ['material.mortar.name']],
    ['all readings together, which are no joints', /^\W*juntas encaj|\{juntas encaj/i],
    ['patch', /masilla|parche/i],
    // A tile that is scratched is rayada; of a drawing it is shaded.
    ['hatched', /rayad[ao]s?\b/i],
    [
      'which way tile is laid, which runs nowhere',
      /baldosa corre|(?:hiler|hilad|junt)as? [^.]*(?<!se )corren? /i,
    ],
    ['what is taken out and put back', /sale y vuelve|^Sale:/i],
    ['the bare base', /base desnuda/i],
  ] as [string, RegExp, string[]?][])('has one word for %s', (_, other, both = []) => {
    expect(holding('es', other)).toEqual(both);
  });

  test('calls the sealant by one name wherever a soft joint is spoken of', () => {
    const words = wordsOf('es');
    const soft = ['drawing.sealant', 'sheet.set-out.soft', 'sheet.base-sheet.joint', 'limit.movement.placed'];
    for (const key of soft) expect(words[key], key).toMatch(/sellante elástico/i);
    expect(words['material.sealer.name']).toBe('Sellador');
  });
});

describe('Portuguese', () => {
  test('has one word for flatness and does not call readings joints', () => {
    expect(holding('pt', /planicidade|planeidade|juntas encaix/i)).toEqual([]);
  });

  test.each([
    ['the rod behind a sealant', /cordão/i],
    ['who sets tile', /assentador/i],
    ['who owns the house', /\bdonos?\b/i],
    ['a notch in a tile', /recorte/i],
    ['how far courses are shifted', /desfasa/i],
    ['a board under tile, which is no tile', /placas? de base/i],
  ])('has one word for %s', (_, other) => {
    expect(holding('pt', other)).toEqual([]);
  });
});

// A figure with a unit belongs into the braces of a message, where the print's own units come in.
test.each(['en', 'es', 'pt'])('a note of a limit in %s has no length of its own', (lang) => {
  const limits = Object.entries(wordsOf(lang)).filter(([key]) => /^(?:limit|calendar)\./.test(key));
  const fixed = limits.filter(([, message]) =>
    /\d ?(?:in|ft|mm|cm|°C|°F)\b/.test(
      message.replace(/\{units, select, mm \{[^}]*\} other \{[^}]*\}\}/g, ''),
    ),
  );
  expect(limits.length).toBeGreaterThan(40);
  expect(fixed.map(([key]) => key)).toEqual([]);
});
