import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { inRings } from '../../src/drawing/inRings.ts';
import { sawDown } from '../../src/measure/index.ts';
import { choiceSheet } from '../../src/sheets/choiceSheet.ts';
import { seenFromDoor } from '../../src/sheets/seenFromDoor.ts';
import { bootRoom, surfaceOf } from '../drawing/fixture.ts';
import { demos } from './demos.ts';

interface Told {
  readonly how: string;
  readonly reason: string;
  readonly rows: readonly { readonly name: string }[];
  readonly swatches: readonly { readonly name: string }[];
}

const offered = demos.filter(({ packet }) => packet.surfaces.some(({ choice }) => choice));

describe('the choice of layout', () => {
  test('is offered in jobs that are planned, and no more once work has begun', () => {
    expect(offered.length).toBeGreaterThan(0);
    expect(offered.map(({ packet }) => packet.job.status)).toEqual(offered.map(() => 'planned'));
  });

  test('is one sheet a floor, where there is one, for the owner and for the office', () => {
    for (const { packet, sheets } of demos) {
      const pages = sheets.filter(({ template }) => template === choiceSheet.name);
      expect(pages).toHaveLength(packet.surfaces.filter(({ choice }) => choice).length);
      for (const { bundles } of pages) expect(bundles).toEqual(['owner', 'office', 'packet']);
    }
  });

  test('advises no layout that the other one equals by every figure', () => {
    for (const { packet, sheets } of offered) {
      const { start, choice } = packet.surfaces[0]!;
      const figures = [start.chosen, choice!.candidate].map(
        ({ smallestShare, underHalf, cut, pieces }) =>
          [Math.round(smallestShare * 100), -underHalf, -cut, -pieces] as const,
      );
      const beaten = figures[1]!.every((figure, i) => figure >= figures[0]![i]!);
      const { data } = sheets.find(({ template }) => template === choiceSheet.name)!;
      expect((data as { advised: boolean }).advised).toBe(!beaten);
    }
  });

  test('tells the narrowest tile inside the border where there is one, since tiles of the border may be narrower', () => {
    const bordered = offered.filter(({ packet }) => packet.surfaces[0]!.border);
    expect(bordered.length).toBeGreaterThan(0);
    for (const { packet, sheets } of offered) {
      const { data } = sheets.find(({ template }) => template === choiceSheet.name)!;
      const { how, reason, rows, swatches } = data as Told;
      const lines = [how, rows[0]!.name, ...swatches.map(({ name }) => name)].filter((line) =>
        /narrowest|same tiles/i.test(line),
      );
      expect(lines).toHaveLength(3);
      const named = [...lines, ...(reason.includes('narrowest') ? [reason] : [])];
      for (const line of named) expect(/border/.test(line)).toBe(packet.surfaces[0]!.border !== undefined);
    }
  });

  test('speaks of no joint, course, rip or other word of the trade', () => {
    const said = offered.flatMap(({ sheets }) =>
      sheets.filter(({ template }) => template === choiceSheet.name).map(({ data }) => JSON.stringify(data)),
    );
    const file = readFileSync(join(import.meta.dirname, '../../layouts/words/sheets.en.yaml'), 'utf8');
    const own = Object.values(parse(file).sheet[choiceSheet.name]);
    const all = [...said, ...own].join(' ').replace(/<svg.*?<\/svg>/g, '');
    expect(all).not.toMatch(/\b(joint|course|rip|field|kerf|module|crossing|taper|stagger|offset)s?\b/i);
  });
});

const other = offered.flatMap(({ slug, packet }) =>
  packet.surfaces.flatMap((surface) =>
    surface.choice ? [{ slug, packet, surface, ...surface.choice }] : [],
  ),
);

describe.each(other)('the other layout of $slug', ({ packet, surface, candidate, pieces, buy }) => {
  test('has as many pieces, cut ones and narrow ones as are told of it', () => {
    // A border is no part of what is chosen.
    const field = pieces.filter(({ border }) => !border);
    const cut = field.filter(({ whole }) => !whole);
    const least = Math.min(...cut.filter(({ seen }) => seen !== 'hidden').map(({ share }) => share));
    expect([field.length, cut.length]).toEqual([candidate.pieces, candidate.cut]);
    expect(least).toBeCloseTo(candidate.smallestShare, 6);
  });

  // Points on a raster: the share that lies on tile is the tile's share of its module, arithmetic.
  test('covers the floor, each point once', () => {
    const [ring] = surface.pattern.tiles.map((tile) => tile.ring);
    const [xs, ys] = [0, 1].map((axis) => ring!.map((point) => point[axis]!)) as [number[], number[]];
    const side = (values: number[]) => Math.max(...values) - Math.min(...values);
    const share = (side(xs) * side(ys)) / ((side(xs) + surface.joint) * (side(ys) + surface.joint));
    const field = surface.field.flatMap(({ outer, holes }) => [outer, ...holes]);
    const all = (axis: 0 | 1) => surface.outline.map((point) => point[axis]);
    const spot = (axis: 0 | 1, k: number) =>
      Math.min(...all(axis)) + ((Math.max(...all(axis)) - Math.min(...all(axis))) * (k + 0.37)) / 90;
    const counts = Array.from(
      { length: 90 * 90 },
      (_, i) => [spot(0, i % 90), spot(1, Math.floor(i / 90))] as const,
    )
      .filter((point) => inRings(point, field))
      .map((point) => pieces.filter(({ shape }) => inRings(point, [shape.outer, ...shape.holes])).length);
    expect(Math.max(...counts)).toBe(1);
    expect(counts.filter((count) => count === 1).length / counts.length).toBeGreaterThan(share - 0.03);
  });

  test('buys no fewer tiles than the floor it covers would take', () => {
    const [tile] = packet.spec.tiles;
    expect(buy[tile!.key]!.buy + tile!.onHand).toBeGreaterThan(pieces.filter(({ whole }) => whole).length);
  });
});

// Arithmetic: joints lie at 49 in and each 12 in from there; the door line is at -2.4 in, the far wall at 98.1 in.
test('from the door one sees the tile there and the one at the wall across', () => {
  const surface = surfaceOf(bootRoom);
  const [view] = seenFromDoor(surface, surface.pieces, 1);
  const inches = (ticks: number) => ticks / 8128;
  expect(view!.name).toBe('hall');
  expect(inches(view!.near.depth!.wide)).toBeCloseTo(49 - 48 - 3 / 32 + 2.4, 1);
  expect(inches(view!.far.depth!.wide)).toBeCloseTo(98.1 - (49 + 48 + 3 / 32), 1);
});

test.each(demos)(
  '$slug: no tile seen from a door is told smaller than the smallest in sight',
  ({ packet }) => {
    for (const surface of packet.surfaces) {
      const { step } = packet.spec.print;
      const smallest = sawDown(surface.start.chosen.smallest, step);
      const depths = seenFromDoor(surface, surface.pieces, step).flatMap(({ near, far }) => [
        near.depth,
        far.depth,
      ]);
      // A tick or two is rounding.
      expect(depths.filter((depth) => depth !== null && depth.wide < smallest - 2)).toEqual([]);
    }
  },
);

test.each(demos)('$slug: a tile seen from a door is told as the saw list has it', ({ packet }) => {
  const { step } = packet.spec.print;
  for (const surface of packet.surfaces)
    for (const { near, far } of seenFromDoor(surface, surface.pieces, step))
      for (const { depth } of [near, far]) {
        if (!depth) continue;
        const ends = surface.cuts.map(({ sizes }) => sizes.map(({ saw }) => saw));
        expect(ends.some((saws) => saws.includes(depth.wide) && saws.includes(depth.narrow))).toBe(true);
      }
});

test('the tile at the far wall of a leaning doorway is told by its own two ends, as on the saw list', () => {
  const { packet } = demos.find(({ slug }) => slug === 'rowan-bath')!;
  const surface = packet.surfaces[0]!;
  const [view] = seenFromDoor(surface, surface.pieces, packet.spec.print.step);
  const ends = surface.cuts
    .filter(({ pieces }) => pieces.includes('N5-3'))
    .flatMap(({ sizes }) => sizes.map(({ saw }) => saw));
  const { wide, narrow } = view!.far.depth!;
  expect(ends.sort((a, b) => a - b)).toEqual([narrow, wide]);
  expect(wide / 8128).toBe(6 + 7 / 8);
});

test('a whole tile at the door is told as one', () => {
  const surface = surfaceOf({ ...bootRoom, crossing: [Math.round((-2.4 - 3 / 32) * 8128), 31 * 8128] });
  expect(seenFromDoor(surface, surface.pieces, 1)[0]!.near.depth).toBeNull();
});

test('a slanting floor has no depth that would say anything', () => {
  const surface = surfaceOf({ ...bootRoom, turn: 45 });
  expect(seenFromDoor(surface, surface.pieces, 1)).toEqual([]);
});
