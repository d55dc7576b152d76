import { expect, test } from 'vitest';
import { demoTexts, sheetsOnce } from './demos.ts';

// The boot room's first zone shows all 110 in of it, 77 high, as its way out leads through. With 14 mm free on each side a page 178 mm wide
// holds 150 mm of it: not 175, 1:16, but 116, 1:24. What stands under it in one language leaves of the
// height of A4 what the room takes at 1:24, 81 mm; in two it does not.
test('the plan of a zone takes the scale that a tighter edge above and below allows', () => {
  const text = demoTexts['fernlea-boot-room']!.replace('paper: letter', 'paper: a4').replace(
    'crew: [en, es]',
    'crew: en',
  );
  const { sheets } = sheetsOnce('fernlea-boot-room', text);
  const zones = sheets.filter(({ template }) => template === 'zone');
  expect(zones.map(({ scale }) => scale)).toEqual(['1:24', '1:16']);
});
