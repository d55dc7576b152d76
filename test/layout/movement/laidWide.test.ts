import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Row } from '../../../src/cuts/Cut.ts';
import { makeCuts } from '../../../src/cuts/makeCuts.ts';
import type { Layout } from '../../../src/layout/Layout.ts';
import type { MovementLine } from '../../../src/layout/movement/Movement.ts';
import { judgeCuts } from '../../cuts/support/judgeCuts.ts';
import { judgeRows } from '../../cuts/support/judgeRows.ts';
import { judged } from '../../support/Judged.ts';
import { judgeCover } from '../../support/judgeCover.ts';
import { judgeDistance } from '../../support/judgeDistance.ts';
import { bayFaults, crossedPieces } from '../../support/judgeMovement.ts';
import { laidOutside, outsideFloor } from '../../support/outsideFloor.ts';

/** Floors outside: 10 in `npm test`, 400 in the long run. */
const FLOORS = process.env.LONG === '1' ? 400 : 10;

const floors = fc
  .sample(outsideFloor, { seed: 20270412, numRuns: FLOORS })
  .map((floor, i) => [`${i} ${floor.shape} ${floor.pattern.name ?? 'straight'}`, floor] as const);
const known = new Map(floors.map(([name, floor]) => [name, laidOutside(floor)]));

describe('floors outside whose soft joints are wider than the grout joint', () => {
  test('are laid out with them', () => {
    const told = [...known].filter(([, { layout }]) => layout.movement && !layout.movement.laid);
    const wide = [...known].filter(([, { layout }]) => layout.wide?.length);
    expect(told.length).toBeLessThanOrEqual(FLOORS / 50);
    expect(wide.length).toBeGreaterThan(FLOORS / 2);
  });

  test.each(floors)('%s: pieces, joints and soft joints cover the field and nothing else', (name) => {
    expect(judgeCover(judged(known.get(name)!.layout))).toEqual([]);
  });

  test.each(floors)('%s: no two pieces lie nearer than the joint between them', (name) => {
    expect(judgeDistance(judged(known.get(name)!.layout))).toEqual([]);
  });

  test.each(floors)('%s: no piece lies across a soft joint, no bay is too long', (name) => {
    const { pieces, turn, movement } = known.get(name)!.layout;
    if (!movement) return;
    expect(crossedPieces({ pieces, turn, movement })).toEqual([]);
    if (movement.missing.length === 0) expect(bayFaults({ pieces, turn, movement })).toEqual([]);
  });

  test.each(floors)('%s: no two pieces have one name', (name) => {
    const ids = known.get(name)!.layout.pieces.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
  });

  test.each(floors)('%s: cuts are their pieces, rows close and have the soft joints in them', (name) => {
    const { layout, job } = known.get(name)!;
    const cuts = makeCuts(job, layout);
    expect(judgeCuts(layout, cuts, job.print.step)).toEqual([]);
    expect(judgeRows(cuts.rows, job.print.system)).toEqual([]);
    expect(cuts.rows.filter((row) => jointsAcross(row, layout) < linesAcross(row, layout))).toEqual([]);
  });

  test.each(floors)('%s: every chalk line lies on the middle of a joint', (name) => {
    const { chalk, pattern, pieces } = known.get(name)!.layout;
    for (const { axis, from } of [...chalk.lines, ...(chalk.further ?? [])]) {
      const [on, straight] = axis === 'along' ? ([0, pattern.straightX] as const) : ([1, true] as const);
      if (!straight) continue;
      const sides = pieces.map(({ fullTile }) => fullTile.map((point) => point[on]));
      const before = Math.max(...sides.map((side) => Math.max(...side)).filter((at) => at <= from[on]));
      const beyond = Math.min(...sides.map((side) => Math.min(...side)).filter((at) => at >= from[on]));
      const across = sides.filter((side) => Math.min(...side) < from[on] && Math.max(...side) > from[on]);
      expect(across).toEqual([]);
      expect(Math.abs(before + beyond - 2 * from[on])).toBeLessThanOrEqual(1);
    }
  });

  const overBase = floors.filter(([, { baseJoint, pattern }]) => baseJoint && !pattern.along);
  test.each(overBase)('%s: what is called over the base joint has it within its width', (name, floor) => {
    const { movement } = known.get(name)!.layout;
    const lines = movement?.lines.filter(({ axis }) => axis === 'along') ?? [];
    for (const { at, why, width } of lines) {
      const away = Math.abs(at - floor.baseJoint!);
      if (why === 'baseJoint') expect(away).toBeLessThanOrEqual(width / 2 + 2);
      else expect(away).toBeGreaterThan(floor.joint / 2);
    }
  });

  const wished = floors.filter(
    ([, { along, pattern }]) => along.kind === 'joint' && !pattern.along && !pattern.name,
  );
  test.each(wished)('%s: the joint that was wished for lies on the middle of its wall', (name, { width }) => {
    const sides = known.get(name)!.layout.pieces.map(({ fullTile }) => fullTile.map(([x]) => x));
    const before = Math.max(...sides.map((x) => Math.max(...x)).filter((x) => x < width / 2));
    const beyond = Math.min(...sides.map((x) => Math.min(...x)).filter((x) => x > width / 2));
    expect(Math.abs(before + beyond - width)).toBeLessThanOrEqual(2);
  });
});

/** Joints of a row that are wider than those of the pattern. */
function jointsAcross({ terms }: Row, { pattern }: Layout): number {
  return terms.filter(({ what, exact }) => what === 'joint' && exact > pattern.joint + 2).length;
}

/** Wide soft joints that run through a row between its first piece and its last. */
function linesAcross({ axis, from, terms }: Row, { movement, pattern }: Layout): number {
  const along = axis === 'along' ? 0 : 1;
  const [first, last] = [terms[0]!, terms.at(-1)!].map(({ exact }) => exact) as [number, number];
  const length = terms.reduce((sum, { exact }) => sum + exact, 0);
  const isBetween = (at: number) => at > from[along] + first && at < from[along] + length - last;
  const level = from[1 - along]!;
  const runs = ({ parts }: MovementLine) =>
    parts.some((part) => part.from[1 - along]! <= level && part.to[1 - along]! >= level);
  const lines = (movement?.laid ? movement.lines : []).filter((line) => line.axis === axis && runs(line));
  return lines.filter(({ width, at }) => width > pattern.joint && isBetween(at)).length;
}
