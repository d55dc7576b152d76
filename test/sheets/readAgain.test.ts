import { describe, expect, test } from 'vitest';
import { remeasureOver } from '../../src/trade/index.ts';
import { demos, words } from './demos.ts';

/** Floors whose readings name a slip, or whose walk round the room misses by more than practice lets stand. */
const isOut = ({ packet }: (typeof demos)[number]) =>
  packet.surfaces.some(
    ({ adjustment }) =>
      adjustment.suspects.length > 0 || adjustment.misclosure > remeasureOver(packet.spec.print.system),
  );

const dataOf = ({ sheets }: (typeof demos)[number], template: string) =>
  sheets.filter((sheet) => sheet.template === template).map(({ data }) => data as Record<string, unknown>);

describe('readings that do not agree', () => {
  test.each(demos.filter(isOut))(
    '$slug: the job sheet names them, and the set-out says not to snap',
    (demo) => {
      const ids = demo.packet.surfaces.flatMap(({ adjustment }) =>
        adjustment.suspects.flatMap((one) => one.ids),
      );
      const gates = dataOf(demo, 'job-sheet')[0]!.gates as { what: string; note: string; state: string }[];
      const { crew } = demo.packet.spec.print;
      const [again] = gates.filter(({ what }) => what === words.say(crew[0]!)('gate.readAgain'));
      expect(again?.state).toBe('open');
      for (const id of ids) expect(again?.note).toContain(id);
      expect(dataOf(demo, 'set-out').some(({ again }) => again)).toBe(true);
    },
  );

  test.each(demos)('$slug: stops every sheet that is not for the owner', (demo) => {
    const says = isOut(demo) && demo.packet.job.status !== 'finished';
    const held = demo.sheets.filter(({ hold }) => hold).map(({ name }) => name);
    const others = demo.sheets.filter((sheet) => sheet.for !== 'owner' && sheet.head).map(({ name }) => name);
    const leans = dataOf(demo, 'set-out').some(({ again }) => again);
    expect(held).toEqual(says || (leans && demo.packet.job.status !== 'finished') ? others : []);
  });

  test.each(demos.filter((demo) => !isOut(demo) && demo.packet.surfaces.length === 1))(
    '$slug: nothing is said where they agree',
    (demo) => {
      const says = dataOf(demo, 'set-out').map(({ again }) => again);
      const leans = JSON.stringify(dataOf(demo, 'job-sheet')).includes(
        words.say(demo.packet.spec.print.crew[0]!)('gate.readAgain'),
      );
      expect(says).toEqual([leans]);
    },
  );

  test('both kinds are among the demo jobs', () => {
    expect(new Set(demos.map(isOut))).toEqual(new Set([true, false]));
  });
});
