import { describe, expect, test } from 'vitest';
import { corridorFloor, corridors } from '../support/corridors.ts';
import { layOut } from '../support/layOut.ts';
import { jobOf } from '../support/surfaceOf.ts';
import { mirrored, renumbered } from '../support/transformSurface.ts';

const MM = 320;
const job = jobOf(597 * MM, 597 * MM, 3 * MM, 'mm');

const floors = Object.entries(corridors).flatMap(([name, floor]) => {
  const surface = corridorFloor(floor);
  const last = surface.corners.length - 1;
  return [
    [`a corridor: ${name}`, floor, surface],
    [`mirrored: ${name}`, floor, mirrored(surface, 600 * MM)],
    [`walked from the second corner: ${name}`, floor, renumbered(surface, 1)],
    [`walked from the last corner: ${name}`, floor, renumbered(surface, last)],
  ] as const;
});

describe.each(floors)('%s', (_, { legs }, surface) => {
  const { chalk } = layOut(job, surface).layout;
  const lines = [...chalk.lines, ...chalk.further!].map((line) => ({
    ...line,
    long: Math.hypot(line.to[0] - line.from[0], line.to[1] - line.from[1]) / MM,
  }));

  test('has a line from end to end of each leg that guides all its courses', () => {
    const found = [...lines].sort((a, b) => b.long - a.long).slice(0, legs.length);
    expect(found.map(({ long }, i) => long >= legs[i]!)).toEqual(legs.map(() => true));
  });

  test('has two marks for each line, or distances off a wall that strike it', () => {
    const loose = lines.filter(({ snappable, byOffsets }) => !snappable && !byOffsets);
    expect(loose).toEqual([]);
  });

  test('has lines on joints only, each in its place once', () => {
    const places = lines.map(({ axis, from, to }) => `${axis} ${from} ${to}`);
    expect(new Set(places).size).toBe(places.length);
    const off = lines.filter(({ axis, from }) => {
      const at = axis === 'along' ? 0 : 1;
      return (from[at] - chalk.crossing[at]) % (600 * MM) !== 0;
    });
    expect(off).toEqual([]);
  });
});
