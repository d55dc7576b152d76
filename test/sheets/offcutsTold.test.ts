import { describe, expect, test } from 'vitest';
import { shapeArea } from '../../src/geometry/index.ts';
import type { Packet } from '../../src/packet/Packet.ts';
import { demos } from './demos.ts';

interface Line {
  readonly number: number;
  readonly pieces: readonly string[];
  readonly mates: readonly string[];
  readonly later: readonly string[];
}
interface SawData {
  readonly zones?: readonly {
    readonly number: number;
    readonly fences: readonly { readonly lines: readonly Line[] }[];
    readonly marked: readonly Line[];
  }[];
  readonly mates?: readonly string[];
}
interface Card {
  readonly number: number;
  readonly pieces: readonly string[];
  readonly notes: readonly string[];
}

/** Pieces that share a tile with another, each with its cut and whether another of them is larger. */
function shared({ surfaces, tiles }: Packet) {
  const cuts = surfaces[0]!.cuts;
  const area = (number: number) => shapeArea(cuts.find((cut) => cut.number === number)!.shape);
  return Object.values(tiles).flatMap(({ from }) =>
    from
      .filter(({ pieces }) => pieces.length > 1)
      .flatMap(({ pieces }) => {
        const sorted = [...pieces].sort((a, b) => area(b.cut) - area(a.cut));
        return sorted.map(({ piece, cut }, i) => ({
          piece,
          cut,
          isOffcut: i > 0,
          others: i > 0 ? [sorted[0]!.cut] : sorted.slice(1).map((one) => one.cut),
        }));
      }),
  );
}

const numbersIn = (words: string) => (words.match(/\d+/g) ?? []).map(Number);

describe.each(demos)('the offcuts of $slug', ({ packet, sheets }) => {
  const all = shared(packet);
  const saw = sheets.find(({ name }) => name === 'saw-list')?.data as SawData | undefined;
  const lines = (saw?.zones ?? []).flatMap(({ fences, marked }) => [
    ...fences.flatMap((fence) => fence.lines),
    ...marked,
  ]);
  const cards = sheets
    .filter(({ template }) => template === 'hard-cuts')
    .flatMap(({ data }) => (data as { cards: readonly Card[] }).cards);

  test('stand at their box on the saw list, with the cut from whose tile they come; and that cut tells that its offcut is kept', () => {
    const told = lines.flatMap(({ pieces, mates }) => pieces.map((piece, i) => [piece, mates[i]!] as const));
    for (const [piece, words] of told) {
      const one = all.find((other) => other.piece === piece);
      expect(numbersIn(words), piece).toEqual(one?.others ?? []);
      if (one) expect(words.startsWith('+'), piece).toBe(!one.isOffcut);
    }
  });

  test('stand on the saw list after the piece of whose tile they come, where that has no card', () => {
    const listed = lines.flatMap(({ pieces }) => pieces);
    const early = Object.values(packet.tiles).flatMap(({ from }) =>
      from.flatMap(({ pieces }) => {
        const own = all.filter(({ piece }) => pieces.some((one) => one.piece === piece));
        const first = own.find(({ isOffcut }) => !isOffcut)?.piece ?? '';
        return own
          .filter((one) => one.isOffcut && listed.includes(one.piece))
          .filter(({ piece }) => listed.indexOf(first) > listed.indexOf(piece));
      }),
    );
    expect(early.map(({ piece }) => piece)).toEqual([]);
  });

  test('stand on the cards of hard cuts', () => {
    const hard = cards.flatMap(({ number, pieces, notes }) =>
      all.filter(({ piece }) => pieces.includes(piece)).map((one) => ({ number, notes, one })),
    );
    for (const { number, notes, one } of hard)
      for (const other of one.others) expect(numbersIn(notes[0] ?? ''), `card ${number}`).toContain(other);
    const others = cards.filter(({ pieces }) => !all.some(({ piece }) => pieces.includes(piece)));
    for (const { notes } of others) expect(notes.join(' ')).not.toMatch(/\d/);
  });

  test('are explained at the head of the saw list, in each language of the crew, where there are any', () => {
    const some = lines.some(({ mates }) => mates.some((words) => words !== ''));
    expect(saw?.mates?.length ?? 0).toBe(some ? packet.spec.print.crew.length : 0);
    for (const words of saw?.mates ?? []) expect(numbersIn(words).length).toBeGreaterThan(1);
  });
});

test('of 90 cut pieces in quarry-kitchen 27 are sawn from offcuts', () => {
  const { packet } = demos.find(({ slug }) => slug === 'quarry-kitchen')!;
  expect(shared(packet).filter(({ isOffcut }) => isOffcut)).toHaveLength(27);
});

describe.each(demos)('the cards of $slug', ({ packet, sheets }) => {
  const all = shared(packet);
  const pages = sheets
    .filter(({ template }) => template === 'hard-cuts')
    .flatMap(({ data }) => (data as { pages: readonly { cards: readonly Card[] }[] }).pages);
  const cards = pages.flatMap((page, at) => page.cards.map((card) => ({ ...card, at })));

  test('stand after those from whose offcuts they come; last those out of a line of the saw list', () => {
    let waited = false;
    cards.forEach(({ number, pieces }, i) => {
      const from = all
        .filter((one) => one.isOffcut && pieces.includes(one.piece))
        .flatMap((one) => one.others);
      const before = cards.slice(0, i).map((card) => card.number);
      const ofCards = from.filter((one) => cards.some((card) => card.number === one));
      expect(before, `card ${number}`).toEqual(expect.arrayContaining(ofCards));
      const waits = ofCards.length < from.length;
      expect(waits || !waited, `card ${number}`).toBe(true);
      waited = waits;
    });
  });
});

test('a card in linden-entry that is sawn from an offcut is measured from the factory end which that still has', () => {
  const { sheets } = demos.find(({ slug }) => slug === 'linden-entry')!;
  const cards = sheets
    .filter(({ template }) => template === 'hard-cuts')
    .flatMap(({ data }) => (data as { cards: readonly Card[] }).cards);
  expect(cards.find(({ number }) => number === 18)!.notes[0]).toContain('cut 25 (saw list)');
  const starts = cards.filter(({ notes }) => notes[0]?.includes('Starts'));
  expect(starts.map(({ number }) => number).sort()).toEqual([16, 18]);
  // Arithmetic: both triangles end where their tile does, at the end that the larger piece leaves; a setter has no other edge to tape from.
  for (const { notes } of starts) {
    expect(notes[0]).toContain('Starts at the offcut’s factory end.');
    expect(notes[1]).toContain('Começa na ponta de fábrica da sobra.');
  }
});

test('a tile of linden-entry that gives a piece to zone 1 is sawn there, though its larger piece is set in zone 2', () => {
  const { sheets } = demos.find(({ slug }) => slug === 'linden-entry')!;
  const { zones = [], mates } = sheets.find(({ name }) => name === 'saw-list')!.data as SawData;
  const told = zones.flatMap(({ number, fences, marked }) =>
    [...fences.flatMap(({ lines }) => lines), ...marked].flatMap(({ pieces, later }) =>
      pieces.flatMap((piece, i) => (later[i] ? [`${number} ${piece} ${later[i]}`] : [])),
    ),
  );
  expect(told.length).toBeGreaterThan(0);
  for (const one of told) expect(one).toMatch(/^1 \S+ for zone 2$/);
  expect(mates![1]).toContain('for zone 2: corte agora');
});
