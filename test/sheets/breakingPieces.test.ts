import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { demos, sheetsOf } from './demos.ts';

/** A flange that a tile's edge passes a sixteenth of an inch off: what stands between breaks. */
const horned = sheetsOf(
  'horned',
  readFileSync(join(import.meta.dirname, '../cases/flange-in-two-plain-halves/job.yaml'), 'utf8').replace(
    'cut of 10 5/16 in at D-A',
    'cut of 10 3/4 in at D-A',
  ),
);

function dataOf<T>(sheets: (typeof demos)[number]['sheets'], kind: string): T | undefined {
  return sheets.find(({ template }) => template === kind)?.data as T | undefined;
}

/** Pieces of which the layout says that too little tile stays at an opening, or that they are too thin to be sawn. */
const breaking = [...demos, horned].flatMap(({ slug, packet, sheets }) =>
  packet.surfaces.map((surface) => ({
    slug,
    pieces: surface.faults
      .filter(({ code }) => code === 'web' || code === 'sliver')
      .flatMap(({ pieces }) => pieces),
    webs: surface.faults.filter(({ code }) => code === 'web').flatMap(({ pieces }) => pieces),
    gates: dataOf<{ gates: readonly { what: string; signed?: boolean }[] }>(sheets, 'job-sheet')!.gates,
    cards:
      dataOf<{ cards: readonly { breaks: boolean; pieces: readonly string[] }[] }>(sheets, 'hard-cuts')
        ?.cards ?? [],
    said: sheets
      .filter(({ template }) => template === 'layout-plan')
      .flatMap(({ data }) => (data as { faults?: readonly string[] }).faults ?? [])
      .join(' '),
  })),
);

describe('a piece that may break at the saw', () => {
  test.each(breaking)('of $slug stands on the crew’s plan by name', ({ pieces, said }) => {
    for (const piece of pieces) expect(said).toContain(piece);
  });

  test.each(breaking)('of $slug has a line to sign and a word on its card, and no other piece has', (one) => {
    const named = (texts: readonly string[]) => [
      ...new Set(texts.flatMap((text) => text.match(/[K-N]\d+-\d+/g) ?? [])),
    ];
    const signed = one.gates
      .filter(({ what, signed }) => signed && /\d-\d/.test(what))
      .map(({ what }) => what);
    expect(named(signed).sort()).toEqual([...one.webs].sort());
    const warned = one.cards.filter(({ breaks }) => breaks).flatMap(({ pieces }) => pieces);
    expect(warned).toEqual(expect.arrayContaining(one.webs));
    for (const { breaks, pieces } of one.cards)
      expect(breaks).toBe(pieces.some((id) => one.webs.includes(id)));
  });

  test('is in one of these jobs at least, at an opening', () => {
    expect(breaking.some(({ webs }) => webs.length > 0)).toBe(true);
  });
});
