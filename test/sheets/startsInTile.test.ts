import { expect, test } from 'vitest';
import { sheetContext } from '../../src/sheets/SheetContext.ts';
import { startsInTile } from '../../src/sheets/startsInTile.ts';
import { demos, words } from './demos.ts';

const { packet, sheets } = demos.find(({ slug }) => slug === 'linden-entry')!;
const data = sheets.find(({ template }) => template === 'tile-sheet')!.data as Record<
  'drawn' | 'last',
  readonly { readonly cuts: readonly number[]; readonly starts: readonly string[] }[]
>;
const told = [...data.drawn, ...data.last].flatMap(({ starts }) => starts);

test('a piece of an offcut is told by the end of its tile that the larger piece leaves it, on tile sheet and card alike', () => {
  expect(told).toEqual([
    'No. 16 starts at the offcut’s factory end.',
    'No. 18 starts at the offcut’s factory end.',
  ]);
});

const say = words.say('en');
const { tiles } = packet.spec;
const cuts = [26, 16].map((number) => packet.surfaces[0]!.cuts.find((one) => one.number === number)!);
const { pieces } = packet.tiles.field!.from.find(({ tile }) => tile === 'T11')!;
const [larger, offcut] = pieces as [(typeof pieces)[number], (typeof pieces)[number]];

test.each([
  // 10 mm from the end that it has.
  [
    [larger, { ...offcut, at: [offcut.at[0] - 3200, offcut.at[1]] as const }],
    '10 mm from the offcut’s factory end',
  ],
  // No other piece: the whole tile is in hand, and the nearer edge that the piece does not touch is told.
  [[offcut], '313 mm from the left edge'],
])('where a piece begins is measured from an edge that the setter has in hand', (own, from) => {
  const of = own.length > 1 ? cuts : cuts.slice(1);
  const context = sheetContext(packet, { lang: 'en', say });
  expect(startsInTile(context, tiles[0]!.key, of, { pieces: own })).toEqual([`No. 16 starts ${from}.`]);
});
