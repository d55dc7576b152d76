import { boxOf } from '../boxes.ts';
import type { Drawing, DrawOptions } from '../Drawing.ts';
import type { Mark, Spot } from '../Mark.ts';
import { penSvg } from '../penSvg.ts';
import { mmPerTick } from '../Scale.ts';
import { rectangle } from '../shapes.ts';
import { sizes, text } from '../text.ts';
import type { TemplatePlan } from './TemplatePlan.ts';

/** Space of the key, its white border, and the least side of a window that can hold its number, in mm. */
const space = { widthMm: 27, heightMm: 22 };
const white = 1;
const roomy = 5;

/** The whole tile with the piece and the pages on it, small, this page heavy: which part of the template one holds. */
export function drawTemplateKey(plan: TemplatePlan, page: number, options: DrawOptions): Drawing {
  const perTick = mmPerTick(1);
  const { tile, shape } = plan.laid;
  const all = boxOf([
    ...tile.map(([x, y]): Spot => [x * perTick, y * perTick]),
    ...plan.grid.windows.flatMap(({ left, bottom, right, top }): Spot[] => [[left, bottom], [right, top]]), // biome-ignore format: two corners
  ]);
  const [width, height] = [all.right - all.left, all.top - all.bottom];
  const reduced = Math.min((space.widthMm - 2 * white) / width, (space.heightMm - 2 * white) / height);
  const place = ([x, y]: Spot): Spot => [
    white + (x - all.left) * reduced,
    white + (y - all.bottom) * reduced,
  ];
  const onKey = (ring: readonly (readonly [number, number])[]) =>
    ring.map(([x, y]) => place([x * perTick, y * perTick]));
  const windows = plan.grid.pages.flatMap((i, order): readonly Mark[] => {
    const { left, bottom, right, top } = plan.grid.windows[i]!;
    const [w, h] = [(right - left) * reduced, (top - bottom) * reduced];
    const number = plan.grid.pages.length > 1 && Math.min(w, h) >= roomy;
    const at = place([(left + right) / 2, (bottom + top) / 2]);
    return [
      rectangle(place([left, bottom]), w, h, { line: i === page ? 'thick' : 'dimension' }),
      ...(number
        ? [
            text(at, String(order + 1), {
              size: sizes.smallest,
              weight: i === page ? 700 : 400,
              clear: 'all',
            }),
          ]
        : []),
    ];
  });
  const marks: readonly Mark[] = [
    { mark: 'area', rings: [onKey(tile)], line: 'fullTile' },
    { mark: 'area', rings: [shape.outer, ...shape.holes].map(onKey), line: 'thin' },
    ...windows,
  ];
  return penSvg(marks, {
    id: options.id,
    label: options.label,
    widthMm: width * reduced + 2 * white,
    heightMm: height * reduced + 2 * white,
    ratio: null,
  });
}
