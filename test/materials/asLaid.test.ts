import { expect, test } from 'vitest';
import { asLaid } from '../../src/materials/asLaid.ts';
import { demos, demoTexts, sheetsOf } from '../sheets/demos.ts';

const laid = (...names: string[]) =>
  asLaid(names.map((name, i) => ({ name, thickness: i + 1 }))).map(({ name }) => name);

// Common practice, no source: a board is set into mortar, tile into mortar of its own on the board.
test('mortar that a job tells after its board lies under it', () => {
  const bottomUp = ['mortar', 'board', 'mortar under tile', 'tile'];
  expect(laid('board', 'mortar', 'mortar under tile', 'tile')).toEqual(bottomUp);
  expect(laid(...bottomUp)).toEqual(bottomUp);
  expect(laid('membrane', 'mortar under tile', 'tile')).toEqual(['membrane', 'mortar under tile', 'tile']);
  expect(laid('wood board', 'mortar', 'mortar under tile', 'tile')[0]).toBe('wood board');
  expect(laid('board', 'mortar', 'membrane', 'mortar', 'tile')[0]).toBe('board');
});

test('the layers of the boot room are told from the base up', () => {
  const { base } = demos.find(({ slug }) => slug === 'fernlea-boot-room')!.packet;
  expect(base.fresh.map(({ name }) => name)).toEqual(['mortar', 'board', 'mortar under tile', 'tile']);
});

test('the section draws them so, whichever way they are told', () => {
  const text = demoTexts['fernlea-boot-room']!.replace(
    /new: \{.*\}/,
    'new: {board: 1/4 in, mortar: 3/32 in, mortar under tile: 1/8 in, tile: 3/8 in}',
  );
  const [{ data }] = sheetsOf('told', text, ['heights']).sheets as unknown as [{ data: { drawing: string } }];
  const words = data.drawing.replace(/<[^>]*>/g, '|').replaceAll('\u00a0', ' ');
  // Words of a section stand from the bottom up, as its layers are drawn.
  const places = ['mortar 3/32', 'board 1/4', 'mortar under tile 1/8'].map((one) => words.indexOf(one));
  expect(places.every((place) => place >= 0)).toBe(true);
  expect([...places].sort((a, b) => a - b)).toEqual(places);
});
