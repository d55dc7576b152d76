import { printLength, type Ticks } from '../measure/index.ts';
import type { Drawing, DrawOptions } from './Drawing.ts';
import { dimensionLine } from './dimension.ts';
import type { Mark } from './Mark.ts';
import { trimmed } from './markBounds.ts';
import { penSvg } from './penSvg.ts';
import { mmPerTick } from './Scale.ts';
import { rectangle } from './shapes.ts';
import { path, text } from './text.ts';

/** What is seen of the tile on each side, in mm. */
const shown = { width: 9, height: 10 };

/** Two tiles with the joint between them at full size: lay a spacer on it. */
export function drawJointFullSize(joint: Ticks, options: DrawOptions): Drawing {
  const gap = joint * mmPerTick(1);
  const { width, height } = shown;
  const tile = (x: number, edge: number): readonly Mark[] => [
    rectangle([x, 0], width, height, { fill: 'cut' }),
    path([[edge, 0], [edge, height]], 'piece'), // biome-ignore format: two ends
  ];
  const { marks, ...size } = trimmed([
    ...tile(0, width),
    ...tile(width + gap, width + gap),
    ...dimensionLine([width, height], [width + gap, height], 3),
    text([width + gap / 2, height + 6.5], printLength(joint, options), {}),
  ]);
  return penSvg(marks, { id: options.id, label: options.label, ratio: 1, ...size });
}
