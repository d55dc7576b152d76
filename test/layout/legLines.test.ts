import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { readJob } from '../../src/job/readJob.ts';
import { makePacket } from '../../src/packet/makePacket.ts';
import { corridorFloor, corridors } from '../support/corridors.ts';
import { layOut } from '../support/layOut.ts';
import { jobOf } from '../support/surfaceOf.ts';
import { mirrored, renumbered } from '../support/transformSurface.ts';

const demos = join(import.meta.dirname, '../../jobs');
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

test('no line is struck from a wall that is farther off than its two marks are apart, which would turn it', () => {
  for (const slug of readdirSync(demos)) {
    const { job } = readJob(readFileSync(join(demos, slug, 'job.yaml'), 'utf8'), 'job.yaml', slug);
    const made = makePacket(job!);
    if (!('packet' in made)) throw new Error(`no packet of ${slug}`);
    for (const { chalk } of made.packet.surfaces) {
      const offsets = (chalk.further ?? []).flatMap((line) =>
        !line.snappable && line.offsets ? [line.offsets] : [],
      );
      for (const { stations } of offsets) {
        const [one, other] = stations;
        expect(Math.max(one!.offset, other!.offset), slug).toBeLessThanOrEqual(
          Math.abs(other!.distance - one!.distance),
        );
      }
    }
  }
});
