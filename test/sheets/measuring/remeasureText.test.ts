import { describe, expect, test } from 'vitest';
import type { Adjustment } from '../../../src/room/Room.ts';
import { remeasureText } from '../../../src/sheets/measuring/remeasureText.ts';
import { sheetContext } from '../../../src/sheets/SheetContext.ts';
import { inches, remeasureOver } from '../../../src/trade/index.ts';
import { demos, words } from '../demos.ts';

const [{ packet }] = demos.filter(({ slug }) => slug === 'rowan-bath') as [(typeof demos)[number]];
const context = sheetContext(packet, { lang: 'en', say: words.say('en') });
const { adjustment } = packet.surfaces[0]!;
const close = { misclosure: inches(1 / 4), corners: [] };
const said = (over: Partial<Adjustment>) => remeasureText(context, { ...adjustment, ...close, ...over });

// Common practice, no source: a room that misses by more than 1/4 in is measured again.
describe('the advice to measure again', () => {
  test('is 1/4 in, or 6 mm', () => {
    expect([remeasureOver('inches'), remeasureOver('mm')]).toEqual([inches(1 / 4), 1920]);
  });

  test('is not given at the limit', () => {
    expect(said({})).toEqual([]);
  });

  test('names the walk round the room and by how much it misses', () => {
    expect(said({ misclosure: inches(5 / 16) })).toEqual([
      expect.stringContaining('walk round the room, by 5/16 in'),
    ]);
  });

  test('names corners that lean unchecked, and none that readings hold as well as a tape can', () => {
    const [corner] = adjustment.corners;
    const lean = { wall: 'A-B', by: inches(1 / 2), over: inches(60) };
    const corners = [
      { ...corner!, name: 'A', sd: inches(3 / 16) },
      { ...corner!, name: 'B', sd: inches(1 / 16), lean },
      { ...corner!, name: 'C', sd: null, lean },
    ];
    expect(said({ corners })).toEqual([expect.stringContaining('corner C')]);
  });
});
