import { describe, expect, test } from 'vitest';
import { demos } from './demos.ts';

interface Labels {
  readonly stacks: readonly {
    readonly zone: number;
    readonly whole: number;
    readonly cut: number;
    readonly cuts: readonly { readonly number: number; readonly count: number }[];
  }[];
  readonly spares: readonly {
    readonly keep: number;
    readonly over: number;
    readonly lot: string;
    readonly joint: string;
  }[];
}

describe.each(demos)('the labels of $slug', ({ packet, sheets }) => {
  const { stacks, spares } = sheets.find(({ template }) => template === 'labels')!.data as Labels;
  const pieces = packet.surfaces.flatMap((surface) => surface.pieces);

  test('count each piece of each zone on its stack', () => {
    for (const { zone, whole, cut } of stacks) {
      const own = pieces.filter((piece) => piece.zone === zone);
      expect([whole, cut]).toEqual([
        own.filter((one) => one.whole).length,
        own.filter((one) => !one.whole).length,
      ]);
    }
    expect(stacks.reduce((sum, { whole, cut }) => sum + whole + cut, 0)).toBe(pieces.length);
  });

  test('name every cut of a stack with its count', () => {
    for (const { zone, cut, cuts } of stacks) {
      expect(cuts.reduce((sum, { count }) => sum + count, 0)).toBe(cut);
      for (const { number, count } of cuts)
        expect(pieces.filter((piece) => piece.zone === zone && piece.cut === number)).toHaveLength(count);
    }
  });

  test('say of the spares what the packet keeps, with the lot as the job has it', () => {
    const plans = Object.values(packet.tiles);
    expect(spares.map(({ keep, over }) => [keep, over])).toEqual(plans.map(({ keep, over }) => [keep, over]));
    expect(spares.map(({ lot }) => lot)).toEqual(packet.spec.tiles.map(({ box }) => box?.lot ?? ''));
  });
});
