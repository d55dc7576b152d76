import { expect, test } from 'vitest';
import { textWidths } from '../../src/drawing/textWidths.ts';
import { wordFiles } from './catalogues.ts';

const known = (weight: 400 | 700) => new Set(textWidths[weight].flatMap(([, letters]) => [...letters]));

test.each(wordFiles)('every letter of $name is in the font, with its width', ({ words }) => {
  const letters = new Set(Object.values(words).flatMap((message) => [...message]));
  for (const weight of [400, 700] as const)
    expect([...letters].filter((letter) => !known(weight).has(letter))).toEqual([]);
});
