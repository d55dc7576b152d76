import { describe, expect, test } from 'vitest';
import { sheetTexts } from '../cases/support/sheetTexts.ts';
import { areaOf } from '../support/Judged.ts';
import { floorJob, patternPacket } from './support/patternFloors.ts';

const job = floorJob('mosaic on sheets', {
  tile: { field: { mosaic: { sheet: '11 1/4 in x 11 1/4 in', chips: '10 x 10' } } },
  joint: '1/8 in',
  pattern: 'straight',
});
const packet = patternPacket(job);
const surface = packet.surfaces[0]!;
const texts = sheetTexts(packet);

test('a sheet is what it reads with one joint, less that joint', () => {
  expect(packet.spec.tiles[0]).toMatchObject({ length: 90424, width: 90424, chips: [10, 10] });
});

test('the layout plan tells of chips, of sheets by area, and of each wider gap', () => {
  const area = surface.field.reduce((sum, shape) => sum + areaOf(shape), 0) / (11.25 * 8128) ** 2;
  const [, sheets] = /Mosaic: sheets of 10 × 10 chips, drawn as sheets; ([\d.]+) of them by area/.exec(
    texts['layout-plan']!,
  )!;
  expect(Number(sheets)).toBeGreaterThanOrEqual(area);
  expect(Number(sheets)).toBeLessThan(area + 0.1);
  expect(surface.chips!.between.length).toBeGreaterThan(0);
  expect(texts['layout-plan']).toContain('Cut the sheets between chips along');
});

test('grout is reckoned round every chip', () => {
  // Arithmetic: a chip of 1 in in a place of 1 1/8 in leaves 1 − 1 / 1.265625 of the floor to joints.
  const floor = surface.field.reduce((sum, shape) => sum + areaOf(shape), 0);
  const litres = (floor * (1 - 1 / 1.265625) * packet.spec.tiles[0]!.thickness) / 320 ** 3 / 1e6;
  const grout = packet.materials.find(({ what }) => what === 'grout')!;
  expect(grout.amount / (litres * packet.spec.products.grout.kgPerLitre * 1.1)).toBeCloseTo(1, 1);
});

describe.each([
  // Arithmetic: 224 circles of 3/4 in, π / 4 × 0.5625 sq in each, on 137.33 sq in; 224 hexagons of √3 / 2 × 0.5625 sq in.
  ['round', 1 - (224 * Math.PI * 0.140625) / (11.75 * 11.6875)],
  ['hexagon', 1 - (224 * Math.sqrt(3) * 0.28125) / (11.75 * 11.6875)],
])('a sheet of %s chips', (kind, share) => {
  const nested = patternPacket(
    floorJob(`sheets of ${kind} chips`, {
      tile: { field: { mosaic: { sheet: '11 3/4 in x 11 11/16 in', chips: '14 x 16', [kind]: '3/4 in' } } },
      joint: '1/16 in',
      pattern: 'straight',
    }),
  );

  test('has all of its sheet that is no chip grouted', () => {
    const [{ field }] = nested.surfaces as [(typeof nested.surfaces)[0]];
    const floor = field.reduce((sum, shape) => sum + areaOf(shape), 0);
    const litres = (floor * share * nested.spec.tiles[0]!.thickness) / 320 ** 3 / 1e6;
    const grout = nested.materials.find(({ what }) => what === 'grout')!;
    expect(grout.amount / (litres * nested.spec.products.grout.kgPerLitre * 1.1)).toBeCloseTo(1, 2);
  });

  test('is cut between chips along no wall, as no straight line runs between them', () => {
    expect(nested.surfaces[0]!.chips).toEqual({ count: [14, 16], between: [] });
    const told = sheetTexts(nested)['layout-plan'];
    expect(told).toContain(
      `${kind === 'round' ? 'Round chips' : 'Hexagons'} of 3/4 in: their rows reach into each other`,
    );
  });
});
