import { describe, expect, test } from 'vitest';
import { startToKeep } from '../../src/sheets/startToKeep.ts';

const axis = (from: string, to: string) =>
  ({ wish: 'best', what: 'joint', position: 0, run: { from, to, length: 1 } }) as const;
const kept = (from: string, to: string) =>
  startToKeep({ turn: 0, start: { along: axis(from, to), across: axis(from, to) } } as never);

describe('the start to write down so that it stays', () => {
  test.each([
    ['A-B', 'C-D', 'A-B and C-D'],
    ['A-B.2', 'C-D', 'A-B and C-D'],
    ['D-A', 'tub:3', 'D-A and tub'],
    ['hall:line', 'sink cabinet:1', 'hall and sink cabinet'],
  ])('names %s and %s as the job file does', (from, to, said) => {
    expect(kept(from, to)).toBe(
      `along: joint centred between ${said}, across: joint centred between ${said}`,
    );
  });
});
