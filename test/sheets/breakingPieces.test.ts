import { describe, expect, test } from 'vitest';
import { demos } from './demos.ts';

/** Pieces of which the layout says that too little tile stays at an opening, or that they are too thin to be sawn. */
const breaking = demos.flatMap(({ slug, packet, sheets }) =>
  packet.surfaces.map((surface) => ({
    slug,
    pieces: surface.faults
      .filter(({ code }) => code === 'web' || code === 'sliver')
      .flatMap(({ pieces }) => pieces),
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

  test('is in some demo job', () => {
    expect(breaking.some(({ pieces }) => pieces.length > 0)).toBe(true);
  });
});
