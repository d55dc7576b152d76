import type { Shape } from '../geometry/index.ts';
import type { TileSides } from './cutFrame.ts';
import type { Mark } from './Mark.ts';
import { type Scale, toPaper } from './Scale.ts';
import type { Shortened } from './shortened.ts';
import { angleTo, move } from './signs.ts';
import { path } from './text.ts';

/** How far the gap is cleared beside the tile, and how far its lines run past it, in mm: over the wall's hatch, short of the sizes. */
const beside = 2.6;
const past = 1.8;
/** Half the width and the length of a zigzag, in mm. */
const zigzag = { half: 1, along: 1 } as const;

/** The gap of a tile that is drawn shorter, as a part of it. */
export function gapShape({ gap: [from, to] }: Pick<Shortened, 'gap'>, { width }: TileSides): Shape {
  return { outer: [[from, 0], [to, 0], [to, width], [from, width]], holes: [] }; // biome-ignore format: a ring on a line
}

/**
 * Break lines across a tile whose middle is left out: all between them is cleared, and each is a thin straight line with a zigzag, as ISO 128-2 has
 * the limit of an interrupted view (line 01.1, as reported; from memory).
 */
export function breakMarks({ gap, tile }: Pick<Shortened, 'gap' | 'tile'>, scale: Scale): readonly Mark[] {
  const [left, right] = gap.map((x) => {
    const [low, high] = [toPaper(scale, [x, 0]), toPaper(scale, [x, tile.width])];
    const up = angleTo(low, high);
    return { up, low, high, from: move(low, up, -beside), to: move(high, up, beside) };
  }) as [BreakLine, BreakLine];
  const cleared: Mark = { mark: 'area', rings: [[left.from, right.from, right.to, left.to]], fill: 'paper' };
  return [cleared, ...[left, right].map(zigzagLine)];
}

interface BreakLine {
  readonly up: number;
  readonly low: readonly [number, number];
  readonly high: readonly [number, number];
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
}

function zigzagLine({ up, low, high }: BreakLine): Mark {
  const middle = [(low[0] + high[0]) / 2, (low[1] + high[1]) / 2] as const;
  const at = (along: number, aside: number) => move(move(middle, up, along), up + Math.PI / 2, aside);
  const { half, along } = zigzag;
  return path(
    [
      move(low, up, -past),
      at(-1.5 * along, 0),
      at(-0.5 * along, half),
      at(0.5 * along, -half),
      at(1.5 * along, 0),
      move(high, up, past),
    ],
    'dimension',
  );
}
