import type { Cut } from '../cuts/Cut.ts';
import { type Point, poleOfInaccessibility, shapeArea, subtract } from '../geometry/index.ts';
import { type TileSides, tileRing } from './cutFrame.ts';
import type { Drawing, DrawOptions } from './Drawing.ts';
import { factorySide } from './factorySide.ts';
import type { Mark, Spot } from './Mark.ts';
import { penSvg } from './penSvg.ts';
import { type Scale, toPaper } from './Scale.ts';
import { cross } from './signs.ts';
import { path, text } from './text.ts';
import { shapeOn } from './trueCircle.ts';

/** Paper round the tile on an icon, its height and the most that it is wide, in mm: a long tile as high as its row would be a sliver. */
const margin = 1;
const high = 11;
const widest = 24;

type Fence = Cut['fences'][number]['on'];

/** What a size is measured from, as two points: the edge of the tile on that side, or a straightedge at its point there. */
function sideOf(on: Fence, tile: TileSides): readonly [Point, Point] {
  const { length, width } = tile;
  const [a, b, c, d] = tileRing({ length, width });
  const sides = { bottom: [a!, b!], right: [b!, c!], top: [c!, d!], left: [d!, a!] } as const;
  return factorySide(on, tile) ?? sides[on];
}

function fenceMarks(cut: Cut, tile: TileSides, scale: Scale): readonly Mark[] {
  return cut.fences.slice(0, 2).flatMap(({ on }, i) => {
    const [a, b] = sideOf(on, tile).map((point) => toPaper(scale, point)) as [Spot, Spot];
    const inward = { bottom: [0, 2.1], top: [0, -2.1], left: [1.7, 0], right: [-1.7, 0] }[on] as [
      number,
      number,
    ];
    const number: Spot = [(a[0] + b[0]) / 2 + inward[0], (a[1] + b[1]) / 2 + inward[1]];
    return [
      path([a, b], 'factory'),
      ...(cut.fences.length > 1 ? [text(number, String(i + 1), { size: 10, clear: 'none' })] : []),
    ];
  });
}

/** Where no fence is set, the factory edges that a cut is measured from, and the straightedge at a point of a tile that has none there. */
function measuredFrom({ fences, sizes }: Cut, tile: TileSides, scale: Scale): readonly Mark[] {
  if (fences.length > 0) return [];
  const sides = new Set(sizes.map(({ from }) => from));
  return [...sides].flatMap((from) => {
    if (from === 'none') return [];
    return path(
      sideOf(from, tile).map((point) => toPaper(scale, point)),
      'factory',
    );
  });
}

/** A small tile for a line of the saw list: the piece that is kept, the waste crossed out, the edge on the fence heavy, or that which is measured from. */
export function drawCutIcon(cut: Cut, tile: TileSides, options: DrawOptions): Drawing {
  const perTick = Math.min((widest - 2 * margin) / tile.length, (high - 2 * margin) / tile.width);
  const wide = Math.max(high, tile.length * perTick + 2 * margin);
  const spot: Spot = [(wide - tile.length * perTick) / 2, (high - tile.width * perTick) / 2];
  const scale: Scale = { ratio: 1, paperMmPerTick: perTick, turn: 0, origin: [0, 0], spot };
  const waste = subtract([{ outer: tileRing(tile), holes: [] }], [cut.shape]);
  const crosses = waste
    .filter((shape) => shapeArea(shape) * perTick ** 2 > 1)
    .flatMap((shape) => cross(toPaper(scale, poleOfInaccessibility(shape, 3200)), 1));
  const marks: readonly Mark[] = [
    { mark: 'area', rings: [tileRing(tile).map((point) => toPaper(scale, point))], line: 'joint' },
    { mark: 'area', rings: shapeOn(scale, cut.shape, cut.circles), line: 'thin', fill: 'paper' },
    ...crosses,
    ...fenceMarks(cut, tile, scale),
    ...measuredFrom(cut, tile, scale),
  ];
  return penSvg(marks, { id: options.id, label: options.label, widthMm: wide, heightMm: high, ratio: null });
}
