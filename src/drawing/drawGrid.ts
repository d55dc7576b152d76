import type { Drawing, DrawOptions, Space } from './Drawing.ts';
import type { Mark } from './Mark.ts';
import { penSvg } from './penSvg.ts';
import { path } from './text.ts';

/** A squared field to sketch on, its lines `step` mm apart, each fifth a little heavier. */
export function drawGrid(space: Space, step: number, options: DrawOptions): Drawing {
  const count = (mm: number) => Math.floor((mm - 1) / step);
  const [columns, rows] = [count(space.widthMm), count(space.heightMm)];
  const [width, height] = [columns * step, rows * step];
  const weight = (i: number) => (i % 5 === 0 ? 'thin' : 'joint');
  const upright = Array.from({ length: columns + 1 }, (_, i): Mark => {
    const x = 0.5 + i * step;
    return path([[x, 0.5], [x, height + 0.5]], weight(i)); // biome-ignore format: a line on a line
  });
  const level = Array.from({ length: rows + 1 }, (_, i): Mark => {
    const y = 0.5 + i * step;
    return path([[0.5, y], [width + 0.5, y]], weight(i)); // biome-ignore format: a line on a line
  });
  const size = { widthMm: width + 1, heightMm: height + 1 };
  return penSvg([...upright, ...level], { id: options.id, label: options.label, ratio: null, ...size });
}
