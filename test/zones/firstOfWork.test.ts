import { describe, expect, test } from 'vitest';
import { bounds } from '../../src/geometry/index.ts';
import { demos } from '../sheets/demos.ts';

const floors = demos.flatMap(({ slug, packet, sheets }) =>
  packet.surfaces.map((surface) => [slug, surface, sheets] as const),
);

describe.each(floors)('the floor of %s', (_, surface, sheets) => {
  const { chalk, zones, pieces } = surface;

  test('is begun with the tile that opens its first zone', () => {
    expect(zones[0]!.pieces).toContain(chalk.firstPiece);
    expect(chalk.firstPiece).toBe(zones[0]!.first);
  });

  test('is begun with a whole tile', () => {
    expect(pieces.find(({ id }) => id === chalk.firstPiece)?.whole).toBe(true);
  });

  test('has that tile on the set-out', () => {
    const page = sheets.find(({ name }) => name.startsWith('set-out'))!;
    expect((page.data as { first: string }).first).toBe(zones[0]!.first);
  });

  test('is lined up on, on the set-out too, where other tile is set before', () => {
    const page = sheets.find(({ name }) => name.startsWith('set-out'))!;
    expect((page.data as { shut?: boolean }).shut).toBe(zones[0]!.beyond !== undefined);
  });

  test.runIf(chalk.guide)('tells how far its nearer sides stand from both lines', () => {
    const { fullTile } = pieces.find(({ id }) => id === chalk.firstPiece)!;
    const { minX, minY, maxX, maxY } = bounds(fullTile);
    const [x, y] = chalk.crossing;
    expect(chalk.guide).toMatchObject({
      along: Math.min(Math.abs(minX - x), Math.abs(maxX - x)),
      across: Math.min(Math.abs(minY - y), Math.abs(maxY - y)),
    });
  });
});
