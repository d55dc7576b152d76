import { printLength } from '../measure/index.ts';
import { type TileSides, tileRing } from './cutFrame.ts';
import type { Drawing, DrawOptions } from './Drawing.ts';
import { dimension } from './dimension.ts';
import type { Spot } from './Mark.ts';
import { trimmed } from './markBounds.ts';
import { penSvg } from './penSvg.ts';
import { pickRatio, ratios } from './pickScale.ts';
import { mmPerTick } from './Scale.ts';
import { arrow } from './signs.ts';

/** Space of the tile itself, without its sizes. */
const space = { widthMm: 20, heightMm: 20 };

/**
 * The tile to scale, its length level, with both sizes and an arrow the way its length runs.
 */
export function drawTile(tile: TileSides, options: DrawOptions): Drawing {
  const { system } = options;
  const ratio =
    pickRatio({ width: tile.length, height: tile.width }, space, system) ?? ratios[system].at(-1)!;
  const [width, height] = [tile.length * mmPerTick(ratio), tile.width * mmPerTick(ratio)];
  const { marks, ...size } = trimmed([
    {
      mark: 'area',
      rings: [tileRing(tile).map(([x, y]): Spot => [x * mmPerTick(ratio), y * mmPerTick(ratio)])],
      line: 'factory',
    },
    ...arrow([width * 0.2, height / 2], [width * 0.8, height / 2]),
    ...dimension([0, 0], [width, 0], -5, printLength(tile.length, options)),
    ...dimension([0, 0], [0, height], 5, printLength(tile.width, options)),
  ]);
  return penSvg(marks, { id: options.id, label: options.label, ratio, ...size });
}
