import { describe, expect, test } from 'vitest';
import { patternJobs, patternPacket } from '../packet/support/patternFloors.ts';
import { demos } from '../sheets/demos.ts';

type Point = readonly [number, number];

/** How far a point lies off the line through two others, and how far along it from the first. */
const onLine = ([ax, ay]: Point, [bx, by]: Point, [x, y]: Point) => {
  const long = Math.hypot(bx - ax, by - ay);
  const [ux, uy] = [(bx - ax) / long, (by - ay) / long];
  return { off: (x - ax) * uy - (y - ay) * ux, along: (x - ax) * ux + (y - ay) * uy, long };
};

const floors = [
  ...patternJobs()
    .filter(([name]) => name.includes('herringbone'))
    .map(([name, job]) => [name, patternPacket(job).surfaces[0]!] as const),
  ...demos
    .filter(({ packet }) => packet.surfaces[0]!.pattern.name === 'herringbone')
    .map(({ slug, packet }) => [slug, packet.surfaces[0]!] as const),
];

describe.each(floors)('the lines along the zigzag of %s', (_, { chalk, pieces, pattern }) => {
  const lines = chalk.further ?? [];
  const { apart, every } = chalk.corners!;
  const corners = pieces.flatMap(({ fullTile }) => fullTile);
  const first = pieces.find(({ id }) => id === chalk.firstPiece)!;

  test('are there, and run along the repeat of the zigzag', () => {
    expect(lines.length).toBeGreaterThan(0);
    for (const { from, to } of lines)
      expect(Math.abs(onLine([0, 0], pattern.a, [to[0] - from[0], to[1] - from[1]]).off)).toBeLessThan(4);
  });

  // Geometry: every zigzag begins anew at the same corner of its next tile, the diagonal of a square of tile and joint on.
  test('pass through a corner of a tile at each step that the sheet prints', () => {
    for (const { from, to } of lines) {
      const places = corners
        .map((corner) => onLine(from, to, corner))
        .filter(({ off, along, long }) => Math.abs(off) <= 2 && along > -2 && along < long + 2)
        .map(({ along }) => along)
        .sort((a, b) => a - b);
      expect(places.length).toBeGreaterThanOrEqual(2);
      const steps = places.slice(1).map((place, i) => place - places[i]!);
      for (const step of steps) expect(Math.abs(step / every - Math.round(step / every))).toBeLessThan(0.01);
      expect(Math.min(...steps.filter((step) => step > 2))).toBeLessThan(every + 2);
    }
  });

  test('lie a whole number of the printed distance apart', () => {
    const [{ from, to } = { from: [0, 0] as Point, to: [1, 0] as Point }] = lines;
    for (const line of lines) {
      const { off } = onLine(from, to, line.from);
      expect(Math.abs(off - apart * Math.round(off / apart))).toBeLessThan(8);
    }
  });

  test('have the first tile on one of them by its corner', () => {
    const offs = lines.flatMap(({ from, to }) =>
      first.fullTile.map((corner) => Math.abs(onLine(from, to, corner).off)),
    );
    expect(Math.min(...offs)).toBeLessThanOrEqual(2);
    expect(chalk.guide!.along).toBeGreaterThanOrEqual(0);
    expect(chalk.guide!.across).toBeGreaterThanOrEqual(0);
  });

  test('take the place of story poles, which hold joints that run through', () => {
    expect(chalk.poles).toBeUndefined();
  });
});
