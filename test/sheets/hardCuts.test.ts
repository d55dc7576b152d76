import { describe, expect, test } from 'vitest';
import { demos } from './demos.ts';

interface Card {
  readonly count: number;
  readonly pieces: readonly string[];
}

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

describe('a hard cut is the same on every sheet: what has a card on the sheet of hard cuts', () => {
  test.each(demos.map((demo) => [demo.slug, demo] as const))('%s', (_slug, { sheets }) => {
    const dataOf = (name: string) =>
      sheets.filter(({ template }) => template === name).map(({ data }) => data as Record<string, unknown>);
    const cards = dataOf('hard-cuts').flatMap((data) => data.cards as readonly Card[]);
    const onCards = cards.flatMap(({ pieces }) => pieces);

    expect(sum(dataOf('layout-plan').map(({ hard = 0 }) => Number(hard)))).toBe(onCards.length);
    const ticked = dataOf('zone').flatMap(
      ({ cuts }) => cuts as readonly { hard: boolean; pieces: readonly string[] }[],
    );
    const hardTicks = ticked.filter(({ hard }) => hard).flatMap(({ pieces }) => pieces);
    expect([...hardTicks].sort()).toEqual([...onCards].sort());
  });

  // One spare for each hole or notch cut inside a tile: common practice, no source. A point is sawn right across, however often.
  test.each(demos)('and has a spare in $slug where it goes into the tile', ({ packet }) => {
    const inside = packet.surfaces
      .flatMap(({ cuts }) => cuts)
      .filter(({ hard, kind }) => hard && kind !== 'point')
      .map(({ pieces }) => pieces.length);
    expect(sum(Object.values(packet.tiles).map(({ spare }) => spare))).toBe(sum(inside));
  });

  test('odd shapes and points of several saw lines are among them', () => {
    const kinds = demos.flatMap(({ packet }) =>
      packet.surfaces.flatMap(({ cuts }) => cuts.filter(({ hard }) => hard).map(({ kind }) => kind)),
    );
    expect(kinds).toContain('odd');
    expect(kinds).toContain('point');
  });
});
