import { describe, expect, test } from 'vitest';
import { movementMarks } from '../../src/drawing/movementMarks.ts';
import { scaleFor } from '../../src/drawing/Scale.ts';
import { demos, words } from './demos.ts';

const floors = demos.flatMap(({ slug, packet, sheets }) =>
  packet.surfaces.map((surface) => ({ slug, packet, surface, sheets })),
);
const open = ({ surface }: (typeof floors)[number]) =>
  (surface.carried ?? []).filter(({ kind }) => kind === 'none').length;

describe('a joint of the base over which no tile joint runs', () => {
  test.each(floors)('of $slug is drawn as a double line', (floor) => {
    const scale = scaleFor(floor.surface.outline, 0, 20, [0, 0]);
    const double = movementMarks(floor.surface, scale).filter(
      (one) => 'line' in one && one.line === 'movement',
    );
    expect(double).toHaveLength(2 * open(floor));
  });

  test.each(floors)('is told under the plan of $slug where there is one, and only there', (floor) => {
    const { packet, sheets } = floor;
    const code = `sheet.layout-plan.carried${packet.job.status === 'finished' ? 'Laid' : ''}`;
    const text = words.say(packet.spec.print.crew[0]!)(code, { count: open(floor) });
    const said = sheets
      .filter(({ template }) => template === 'layout-plan')
      .flatMap(({ data }) => (data as { faults?: readonly string[] }).faults ?? []);
    expect(said.includes(text)).toBe(open(floor) > 0);
  });

  test('is in some demo jobs, and in others not', () => {
    expect(new Set(floors.map((floor) => open(floor) > 0))).toEqual(new Set([true, false]));
  });
});
