import { describe, expect, test } from 'vitest';
import { isHard } from '../../src/cuts/isHard.ts';
import { pileLine } from '../../src/sheets/pileLine.ts';
import { demos, words } from './demos.ts';

interface Line {
  readonly count: number;
  readonly cuts: readonly number[];
  readonly tiles: readonly { readonly tile: string; readonly pieces: string }[];
  readonly more?: readonly Line['tiles'][];
  readonly drawing?: string;
}

describe.each(demos)('the tile sheet of $slug', ({ packet, sheets }) => {
  const sheet = sheets.find(({ template }) => template === 'tile-sheet')!;
  const data = sheet.data as Readonly<Record<'drawn' | 'last' | 'lines', readonly Line[]>>;
  const { lines } = data;
  // Many equal tiles stand in blocks of their own under their drawing.
  const drawn = [...data.drawn, ...data.last].map((line) => ({
    ...line,
    tiles: [...line.tiles, ...(line.more ?? []).flat()],
  }));
  const from = Object.values(packet.tiles).flatMap((plan) => plan.from);

  test('goes to the crew where a tile gives more than one piece', () => {
    const shared = from.some(({ pieces }) => pieces.length > 1);
    expect(sheet.bundles.includes('crew')).toBe(shared);
    expect(sheet.bundles).toEqual(expect.arrayContaining(['office', 'packet']));
  });

  test('tells each sawn tile once, with its pieces', () => {
    const told = [...drawn, ...lines].flatMap(({ tiles }) => tiles);
    const wanted = from.map(({ tile, pieces }) => [tile, pieces.map(({ piece }) => piece).sort()]);
    const byTile = (a: readonly unknown[], b: readonly unknown[]) => String(a[0]).localeCompare(String(b[0]));
    expect(told.map(({ tile, pieces }) => [tile, pieces.split(' + ').sort()]).sort(byTile)).toEqual(
      wanted.sort(byTile),
    );
  });

  test('counts equal tiles, which have equal cuts', () => {
    for (const { count, cuts, tiles } of [...drawn, ...lines]) {
      expect(tiles).toHaveLength(count);
      for (const { tile } of tiles)
        expect(
          from
            .find((one) => one.tile === tile)!
            .pieces.map(({ cut }) => cut)
            .sort(),
        ).toEqual([...cuts].sort());
    }
  });

  test('draws every tile that gives several pieces or a hard one, and lists the others', () => {
    const hard = new Set(
      packet.surfaces.flatMap(({ cuts }) => cuts.filter(isHard)).map(({ number }) => number),
    );
    const wants = ({ cuts }: Line) => cuts.length > 1 || hard.has(cuts[0]!);
    expect([drawn.every(wants), lines.some(wants)]).toEqual([true, false]);
    expect(drawn.filter(({ drawing }) => !/role="img" aria-label="[^"]+"/.test(drawing!))).toEqual([]);
  });

  test('names what each cut counts in the proof, or that all others count nothing', () => {
    const { proofs } = sheet.data as { proofs: readonly { lines: readonly string[] }[] };
    for (const [i, { tile }] of Object.values(packet.tiles).entries()) {
      const cuts = packet.surfaces.flatMap((surface) => surface.cuts.filter((cut) => cut.tile === tile));
      const said = proofs[i]!.lines.join(' ');
      const named = cuts.every(({ number }) =>
        new RegExp(`\\b${number}\\b`).test(said.replace(/\(\d+\u00a0×\)/g, '')),
      );
      expect(named || /\b0 (?:each|cada)/.test(said)).toBe(true);
    }
  });

  test('tells how many tiles are needed and proved necessary, with a sum that comes to the proof', () => {
    const { proofs } = sheet.data as { proofs: readonly { line: string; sum: string }[] };
    for (const [i, { needed, bound }] of Object.values(packet.tiles).entries()) {
      const { line, sum } = proofs[i]!;
      expect(line.match(/\d+/g)).toEqual([String(needed), String(bound)]);
      const [terms, found] = sum.split(' = ');
      // Read back as it is printed: '27 × 1 + 5 × 1/2'.
      const value = (part: string) =>
        part
          .split('/')
          .map(Number)
          .reduce((a, b) => a / b);
      const added = terms!.split(' + ').map((term) =>
        term
          .split(' × ')
          .map(value)
          .reduce((a, b) => a * b),
      );
      expect(Math.ceil(added.reduce((a, b) => a + b) - 1e-9)).toBe(bound);
      expect(Number(found!.split(' < ').at(-1))).toBe(bound);
    }
  });

  test('tells what either plan comes to, here and in the material tally, whichever is chosen', () => {
    const { proofs } = sheet.data as { proofs: readonly { pile: string }[] };
    const tally = sheets.find(({ template }) => template === 'material-tally')!;
    const { tiles } = tally.data as { tiles: readonly { pileLine: string }[] };
    for (const [i, plan] of Object.values(packet.tiles).entries()) {
      const { fewestTiles: fewest, smallestPile: small } = plan.plans!;
      const two = [fewest.needed, fewest.pile, small.needed, small.pile];
      const told = fewest.pile === 0 ? [] : fewest.pile === small.pile ? [fewest.pile, 1] : two;
      expect(proofs[i]!.pile.match(/\d+/g) ?? []).toEqual(told.map(String));
      expect(tiles[i]!.pileLine.match(/\d+/g) ?? []).toEqual(told.map(String));
      const chosen = { ...plan, plans: { ...plan.plans!, chosen: 'smallestPile' as const } };
      const say = words.say('en');
      if (told.length === 4) expect(pileLine({ say }, chosen)).toMatch(/goes by the smallest pile\.$/);
    }
  });
});
