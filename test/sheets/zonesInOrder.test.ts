import { describe, expect, test } from 'vitest';
import type { Packet } from '../../src/packet/Packet.ts';
import { makeSheets } from '../../src/sheets/makeSheets.ts';
import { demos, words } from './demos.ts';

const { packet } = demos.find(({ slug }) => slug === 'quarry-kitchen')!;
const [line] = packet.surfaces[0]!.chalk.lines;

/** The set-out sheet of a kitchen with further zones, of each the lines that are to be snapped before it. */
function laterOf(...fresh: readonly number[]) {
  const later = fresh.map((count, i) => ({
    zone: i + 2,
    bare: ['1'],
    lines: Array.from({ length: count }, () => line!),
  }));
  const [surface] = packet.surfaces;
  const made: Packet = { ...packet, surfaces: [{ ...surface!, chalk: { ...surface!.chalk, later } }] };
  const [sheet] = makeSheets(made, words, ['set-out']);
  return (sheet!.data as unknown as { later: readonly { leads: boolean }[] }).later.map(({ leads }) => leads);
}

describe('what is snapped before each further zone is told in the order of the zones', () => {
  test('in the paragraph before the tables as long as there is no table yet', () => {
    expect(laterOf(0, 0)).toEqual([true, true]);
    expect(laterOf(0, 1)).toEqual([true, false]);
  });

  test('words of a zone after one with a table stand after that', () => {
    expect(laterOf(1, 0)).toEqual([false, false]);
  });
});
