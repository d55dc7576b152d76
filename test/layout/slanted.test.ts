import { describe, expect, test } from 'vitest';
import type { Point, Shape } from '../../src/geometry/index.ts';
import { frameRoom } from '../../src/layout/frame/frameRoom.ts';
import { makeGround } from '../../src/layout/frame/Ground.ts';
import { turnOf } from '../../src/layout/frame/turnOf.ts';
import { countTiles } from '../../src/layout/pieces/insideTiles.ts';
import { layTiles } from '../../src/layout/pieces/layTiles.ts';
import { makePattern } from '../../src/pattern/index.ts';
import { makeRoom } from '../../src/room/makeRoom.ts';
import { areaOf } from '../support/Judged.ts';
import { jobOf, rectangle, surfaceOf, ticks } from '../support/surfaceOf.ts';

// A hall of 36 x 120 in, 12 in tile, joint 3/16 in, gap 1/4 in, at 45° (common practice, no source).
const surface = surfaceOf(rectangle(ticks('120 in'), ticks('36 in')), { pattern: { turnedDeg: 45 } });
const made = makeRoom(surface);
if ('problems' in made) throw new Error('room refused');
const frame = frameRoom(made.room, turnOf(made.room, surface.pattern));
const ground = makeGround(frame, [], { ...surface, minStrip: 0 });
const [tile, joint] = [ticks('12 in'), ticks('3/16 in')];
const pattern = makePattern(surface.pattern, jobOf(tile, tile, joint).tiles, joint);

/** Pieces with a tile's centre on the hall's middle, moved sideways; and those under a tenth of a tile. */
function laidWith(sideways: number) {
  const half = Math.SQRT1_2;
  const centre: Point = [
    ticks('60 in') * half + ticks('18 in') * half,
    ticks('18 in') * half - ticks('60 in') * half,
  ];
  const by = (sideways * pattern.module[0] * Math.SQRT2 * half) / 1;
  const origin: Point = [Math.round(centre[0] - tile / 2 + by), Math.round(centre[1] - tile / 2 + by)];
  const { inside, border } = layTiles(ground, pattern, origin);
  const share = (shape: Shape) => areaOf(shape) / tile ** 2;
  return {
    pieces: countTiles(inside) + border.length,
    tiny: border.filter(({ shape }) => share(shape) < 0.1).length,
  };
}

describe('a hall laid at 45°', () => {
  test('tile points on the middle: 49 pieces, 12 of them under a tenth of a tile', () => {
    expect(laidWith(0)).toEqual({ pieces: 49, tiny: 12 });
  });

  test('shifted sideways by a quarter: 45 pieces, 2 under a tenth', () => {
    expect(laidWith(0.25)).toEqual({ pieces: 45, tiny: 2 });
  });
});
