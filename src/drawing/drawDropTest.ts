import type { Drawing, DrawOptions } from './Drawing.ts';
import type { Mark, Spot, Step } from './Mark.ts';
import { trimmed } from './markBounds.ts';
import { penSvg } from './penSvg.ts';
import { rectangle } from './shapes.ts';
import { arrow } from './signs.ts';
import { path, sizes, text } from './text.ts';

/** One frame's width and height, the space between two, and the tile and joint seen in it, in mm. */
const frame = { width: 46, height: 26, apart: 8 };
const tile = { width: 17, height: 7 };

/** A drop seen from the side: a cap of a circle standing on the joint, `half` wide to each side and `high`. */
function cap(x: number, y: number, half: number, high: number): Mark {
  const radius = (half * half + high * high) / (2 * high);
  const centre: Spot = [x, y + high - radius];
  const angle = Math.atan2(y - centre[1], half);
  const steps: Step[] = [[x + half, y], { centre, radius, from: angle, to: Math.PI - angle }];
  return { mark: 'area', rings: [steps], line: 'slash', fill: 'paper' };
}

/** Two tiles with the grout between them, cut through; soaked grout is black. */
function ground(x: number, soaked: boolean): readonly Mark[] {
  const joint = frame.width - 2 * tile.width - 4;
  const left = x + 2;
  return [
    rectangle([left, 2], tile.width, tile.height, { line: 'thick', fill: 'paper' }),
    rectangle([left + tile.width + joint, 2], tile.width, tile.height, { line: 'thick', fill: 'paper' }),
    rectangle([left + tile.width, 2], joint, tile.height - 0.8, {
      line: 'slash',
      fill: soaked ? 'ink' : 'hidden',
    }),
  ];
}

/** The falling drop, a bead that stands, and dark grout that has drunk it. */
function scene(kind: 'drop' | 'wait' | 'soaks', x: number): readonly Mark[] {
  const middle = x + frame.width / 2;
  const top = 2 + tile.height - 0.8;
  if (kind === 'wait') return [...ground(x, false), cap(middle, top, 3.4, 4)];
  if (kind === 'soaks') return [...ground(x, true), cap(middle, top, 4.5, 0.8)];
  const drop: Step[] = [[middle, 21], [middle - 1.6, 17.5], { centre: [middle, 16.6], radius: 1.85, from: Math.PI * 0.85, to: Math.PI * 2.15 }]; // biome-ignore format: a drop on a line
  return [
    ...ground(x, false),
    { mark: 'area', rings: [drop], line: 'slash', fill: 'paper' },
    ...arrow([middle, 14.2], [middle, 10]),
  ];
}

/** The drop test of grout in three frames: put a drop on; it stands: fine; it soaks in and darkens: seal again. */
export function drawDropTest(options: DrawOptions): Drawing {
  const kinds = ['drop', 'wait', 'soaks'] as const;
  const { marks, ...size } = trimmed(
    kinds.flatMap((kind, i) => {
      const x = i * (frame.width + frame.apart);
      return [
        rectangle([x, 0], frame.width, frame.height, { line: 'thin' }),
        ...scene(kind, x),
        text([x + 3.5, frame.height - 4], String(i + 1), { weight: 700 }),
        text([x + frame.width / 2, -4], options.say(`drawing.dropTest.${kind}`), { size: sizes.note }),
        ...(i > 0 ? [path([[x - frame.apart + 1, frame.height / 2], [x - 1, frame.height / 2]], 'dimension')] : []), // biome-ignore format: two ends
      ];
    }),
  );
  return penSvg(marks, { id: options.id, label: options.label, ratio: null, ...size });
}
