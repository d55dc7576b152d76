import { describe, expect, test } from 'vitest';
import { lineThroughShape, offsetShapes } from '../../src/geometry/index.ts';
import { demos, demoTexts, sheetsOf } from '../sheets/demos.ts';

/** A joint is at most so wide: less of a line than this over a piece is beside it. Ticks. */
const BESIDE = 2000;

/** The kitchen of an island that parts its zones, in more of them and with its pattern the other way. */
const kitchens = [2, 3, 4].flatMap((count) =>
  ['A-B', 'B-C'].map((along) => {
    const text = demoTexts['quarry-kitchen']!.replace('along: B-C', `along: ${along}`).replace(
      '  exposure: dry',
      `  exposure: dry\n  zones: ${count}`,
    );
    return { ...sheetsOf('quarry-kitchen', text, []), slug: `${count} zones along ${along}` };
  }),
);

const several = [...demos, ...kitchens].flatMap(({ slug, packet }) =>
  packet.surfaces
    .filter(({ zones }) => zones.length > 1)
    .map((surface) => [`${slug}, ${surface.name}`, surface] as const),
);

describe('which chalk lines are bare before a zone, by the pieces that lie then', () => {
  test.each(several)('%s', (_, { chalk, zones, pieces, joint }) => {
    const later = chalk.later ?? [];
    expect(later).toHaveLength(zones.length - 1);
    for (const { zone, bare, lines } of later) {
      const laid = new Set(zones.filter(({ number }) => number < zone).flatMap((one) => one.pieces));
      // A line runs along the joints, so it is covered where tile lies beside it.
      const covered = pieces
        .filter(({ id }) => laid.has(id))
        .flatMap(({ shape }) => offsetShapes([shape], joint));
      const over = ([x, y]: readonly number[], [toX, toY]: readonly number[]) => {
        const along = [toX! - x!, toY! - y!] as const;
        const long = Math.hypot(...along);
        return covered
          .flatMap((shape) => lineThroughShape(shape, [x!, y!], along))
          .map(({ from, to }) => (Math.min(1, to) - Math.max(0, from)) * long)
          .some((part) => part > BESIDE);
      };
      const own = [...chalk.lines, ...(chalk.further ?? [])].filter(({ snappable }) => snappable);
      const found = own.filter(({ from, to }) => !over(from, to)).map(({ name }) => name);
      expect([zone, bare]).toEqual([zone, found]);
      for (const { from, to } of lines) expect(over(from, to)).toBe(false);
    }
  });
});
