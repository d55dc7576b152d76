import { describe, expect, test } from 'vitest';
import { bounds } from '../../src/geometry/index.ts';
import { makeLayout } from '../../src/layout/makeLayout.ts';
import { makeRoom } from '../../src/room/makeRoom.ts';
import { layOut } from '../support/layOut.ts';
import { jobOf, rectangle, surfaceOf, ticks, wallFacts } from '../support/surfaceOf.ts';

const tile = ticks('12 in');
const joint = ticks('1/8 in');
const from = { along: { kind: 'tile', on: 'D-A' }, across: { kind: 'tile', on: 'A-B' } } as const;

/** One row of tiles from wall D-A, its last one `over` beyond the fourth tile, less the joint. */
function row(over: string, walls: Parameters<typeof surfaceOf>[1] = {}) {
  const width = 4 * tile + 3 * joint + 2 * 2032 + ticks(over);
  const surface = surfaceOf(rectangle(width, tile + 2 * 2032), { start: from, ...walls });
  return layOut(jobOf(tile, tile, joint), surface).layout;
}

describe('a strip that is only gap', () => {
  test('is left out where strip, joint and gap are no more than the base covers', () => {
    // 1/8 in joint, 1/8 in strip, 1/4 in gap: 1/2 in, which base covers.
    const { pieces, left } = row('1/4 in');
    expect(pieces).toHaveLength(4);
    expect(left).toMatchObject([{ why: 'gapOnly', edge: 'B-C', gap: ticks('1/2 in') }]);
  });

  test('is laid where it is a little wider', () => {
    const { pieces, left } = row('17/64 in');
    expect([pieces.length, left.length]).toEqual([5, 0]);
  });

  test('is laid where nothing covers the edge', () => {
    expect(row('1/4 in', { walls: { 'B-C': { gapMax: 2540 } } }).pieces).toHaveLength(5);
  });

  test('is told, with the gap that results', () => {
    const [fault] = row('1/4 in').faults.filter(({ code }) => code === 'gapOnly');
    expect(fault).toMatchObject({ edge: 'B-C', figures: { size: ticks('1/2 in') } });
  });

  test('1/8 in at the end of 108 in of 17.854 in tile: strip and joint are the gap (common practice, no source)', () => {
    const thin = ticks('1/8 in');
    const wide = Math.ceil((ticks('108 in') - 7 * thin) / 6);
    const surface = surfaceOf(rectangle(ticks('108 in'), wide), {
      facts: { gap: 0, gapMax: ticks('1/4 in') },
      start: from,
    });
    const { pieces, left } = layOut(jobOf(wide, wide, thin), surface).layout;
    expect(pieces).toHaveLength(6);
    expect(Math.abs(left[0]!.gap - ticks('1/4 in'))).toBeLessThanOrEqual(6);
  });
});

describe('a tile that reaches into the gap', () => {
  /** The room is this much too short for four whole tiles. */
  function short(by: string) {
    const width = 4 * tile + 3 * joint + 2 * 2032 - ticks(by);
    return layOut(jobOf(tile, tile, joint), surfaceOf(rectangle(width, tile + 2 * 2032), { start: from }))
      .layout;
  }

  test('stays whole where 1/16 in less of a 1/4 in gap is left', () => {
    const { pieces, faults } = short('1/16 in');
    expect(pieces.every(({ whole }) => whole)).toBe(true);
    expect(faults).toMatchObject([{ code: 'keptWhole', edge: 'B-C', figures: { size: ticks('3/16 in') } }]);
  });

  test('is cut where more would be taken', () => {
    expect(short('5/64 in').pieces.filter(({ whole }) => !whole)).toHaveLength(1);
  });

  test('is cut where less than 1/8 in would be left', () => {
    const facts = { gap: ticks('5/32 in'), gapMax: ticks('5/32 in') };
    const width = 4 * tile + 3 * joint + 2 * facts.gap - ticks('1/16 in');
    const surface = surfaceOf(rectangle(width, tile + 2 * facts.gap), { facts, start: from });
    expect(layOut(jobOf(tile, tile, joint), surface).layout.pieces.at(-1)!.whole).toBe(false);
  });

  test('adds what it covers to the field', () => {
    const { field } = short('1/16 in');
    const { maxX } = bounds(field.map(({ outer }) => outer));
    expect(maxX).toBe(2032 + 4 * tile + 3 * joint);
  });
});

describe('tile beside an opening', () => {
  const column = (x: string) =>
    surfaceOf(rectangle(ticks('60 1/2 in'), ticks('60 1/2 in')), {
      start: from,
      obstacles: [
        {
          ...wallFacts({ meets: 'column', gapMax: 2032 }),
          name: 'column',
          shape: {
            kind: 'rectangle',
            along: ticks('3 in'),
            out: ticks('3 in'),
            from: [
              { wall: 'A-B', distance: ticks('4 in') },
              { wall: 'D-A', distance: ticks(x) },
            ],
          },
        },
      ],
    });
  const faultsAt = (x: string) =>
    layOut(jobOf(tile, tile, joint), column(x)).layout.faults.filter(({ code }) => code === 'web');

  test('is a fault under 1/2 in, with its width', () => {
    // Tile from 1/4 to 12 1/4 in; the column with its gap ends at 11 7/8 in.
    expect(faultsAt('8 5/8 in')).toMatchObject([
      { figures: { size: ticks('3/8 in'), limit: ticks('1/2 in') } },
    ]);
  });

  test('is none at 1/2 in', () => expect(faultsAt('8 1/2 in')).toEqual([]));

  test('is none where the opening goes through to the joint', () => expect(faultsAt('9 in')).toEqual([]));
});

describe('what cannot be laid', () => {
  const refused = (surface: ReturnType<typeof surfaceOf>, size: number) => {
    const made = makeRoom(surface);
    if ('problems' in made) throw new Error('room refused');
    const layout = makeLayout(jobOf(size, size, 508), surface, made.room);
    return 'problems' in layout ? layout.problems : [];
  };

  test('two million pieces are refused with the limit', () => {
    const huge = surfaceOf(rectangle(ticks('120 ft'), ticks('120 ft')));
    expect(refused(huge, ticks('1 in'))).toMatchObject([
      { code: 'tooManyPieces', path: ['floor', 'pattern'], figures: { limit: 100000 } },
    ]);
  });

  test('an edge that the room does not have is named', () => {
    const surface = surfaceOf(rectangle(tile * 4, tile * 4), {
      start: { across: { kind: 'tile', on: 'X-Y' } },
    });
    expect(refused(surface, tile)).toMatchObject([
      { code: 'unknownEdge', found: 'X-Y', path: ['floor', 'start', 'across'] },
    ]);
  });

  test('a field in which only gap would be left holds no piece', () => {
    const facts = { gap: 1016, gapMax: ticks('3 in') };
    const narrow = surfaceOf(rectangle(ticks('60 in'), ticks('1 in')), { facts });
    expect(refused(narrow, tile)).toMatchObject([{ code: 'noPieces' }]);
  });
});
