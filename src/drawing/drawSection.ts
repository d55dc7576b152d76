import type { Layer } from '../job/Job.ts';
import { printLength, type System } from '../measure/index.ts';
import type { Packet } from '../packet/Packet.ts';
import type { Drawing, DrawOptions } from './Drawing.ts';
import type { Fill } from './hatches.ts';
import { keepApart } from './keepApart.ts';
import type { Mark } from './Mark.ts';
import { trimmed } from './markBounds.ts';
import { penSvg } from './penSvg.ts';
import { mmPerTick } from './Scale.ts';
import { rectangle } from './shapes.ts';
import { cross } from './signs.ts';
import { path, sizes, text } from './text.ts';

/** What a section is made of: the layers and the heights that follow from them. */
export type SectionOf = Pick<Packet, 'base' | 'heights'>;

/** Columns of what is there now and of what will be, where their words begin, and the least distance of two lines of words, in mm. */
const column = 26;
const now = 0;
const then = 86;
const words = 4;
const apart = 5.2;
/** Depth of the base that is shown, and how far from the tile's face a measured height is still drawn. */
const baseDeep = 7;
const farthest = 40;
const mostHigh = 60;

interface Band {
  readonly layer: Layer;
  readonly bottom: number;
  readonly top: number;
  readonly gone: boolean;
}

/** Layers one on the other from the bare base, in mm of paper. */
function stack(
  layers: readonly { readonly layer: Layer; readonly gone: boolean }[],
  perTick: number,
): readonly Band[] {
  return layers.map(({ layer, gone }, i) => {
    const below = layers.slice(0, i).reduce((sum, one) => sum + one.layer.thickness, 0);
    return { layer, gone, bottom: below * perTick, top: (below + layer.thickness) * perTick };
  });
}

const fills: readonly Fill[] = ['paper', 'cut', 'paper', 'hidden'];

function bands(all: readonly Band[], x: number, system: System): readonly Mark[] {
  const levels = keepApart(
    all.map(({ bottom, top }) => (bottom + top) / 2),
    apart,
  );
  return all.flatMap(({ layer, bottom, top, gone }, i) => {
    const right = x + column;
    const level = levels[i]!;
    return [
      rectangle([x, bottom], column, top - bottom, {
        line: gone ? 'fullTile' : 'thin',
        fill: gone ? 'paper' : fills[i % fills.length]!,
      }),
      ...(gone && top - bottom > 1.5
        ? cross([x + column / 2, (bottom + top) / 2], Math.min(3, (top - bottom) / 2))
        : []),
      path([[right, (bottom + top) / 2], [right + words - 1, level]], 'leader'), // biome-ignore format: two ends
      text([right + words, level], `${layer.name} ${printLength(layer.thickness, system)}`, {
        size: sizes.name,
        anchor: 'start',
      }),
    ];
  });
}

function baseMarks(x: number, name: string): readonly Mark[] {
  return [
    rectangle([x, -baseDeep], column, baseDeep, { fill: 'wall' }),
    path([[x - 3, 0], [x + column + 3, 0]], 'wall'), // biome-ignore format: two ends
    text([x + column + words, -baseDeep / 2], name, { size: sizes.name, anchor: 'start' }),
  ];
}

/** Heights of doors, flanges and floors against the face of the new tile, left of the new layers. */
function heightMarks({ heights }: SectionOf, face: number, perTick: number, system: System): readonly Mark[] {
  const near = heights.results.filter(({ after }) => Math.abs(after * perTick) <= farthest);
  const levels = keepApart(
    near.map(({ after }) => face + after * perTick),
    apart,
  );
  return near.flatMap(({ name, after }, i) => {
    const y = face + after * perTick;
    const sign = after > 0 ? '+' : '';
    return [
      path([[then - 6, y], [then + column + 2, y]], 'opening'), // biome-ignore format: two ends
      path([[then - 7.5, levels[i]!], [then - 6, y]], 'leader'), // biome-ignore format: two ends
      text([then - 8, levels[i]!], `${name} ${sign}${printLength(after, system)}`, {
        size: sizes.name,
        anchor: 'end',
      }),
    ];
  });
}

/**
 * The layers on the bare base, before and after, true to scale: what comes up is dashed and crossed, what was measured
 * in height stands as a dashed line with its height over the face of the new tile.
 */
export function drawSection(packet: SectionOf, options: DrawOptions): Drawing {
  const { base } = packet;
  const before = [
    ...base.kept.map((layer) => ({ layer, gone: false })),
    ...base.removed.map((layer) => ({ layer, gone: true })),
  ];
  const after = [...base.kept, ...base.fresh].map((layer) => ({ layer, gone: false }));
  const high = Math.max(
    ...[before, after].map((all) => all.reduce((sum, { layer }) => sum + layer.thickness, 0)),
  );
  const ratio = [1, 2, 4].find((one) => high * mmPerTick(one) <= mostHigh) ?? 8;
  const perTick = mmPerTick(ratio);
  const face = after.reduce((sum, { layer }) => sum + layer.thickness, 0) * perTick;
  const title = (x: number, code: string) =>
    text([x + column / 2, -baseDeep - 5], options.say(code), { size: sizes.note, weight: 700 });
  const { marks, ...size } = trimmed([
    ...baseMarks(now, base.below),
    ...baseMarks(then, base.below),
    ...bands(stack(before, perTick), now, options.system),
    ...bands(stack(after, perTick), then, options.system),
    ...heightMarks(packet, face, perTick, options.system),
    title(now, 'drawing.section.before'),
    title(then, 'drawing.section.after'),
  ]);
  return penSvg(marks, { id: options.id, label: options.label, ratio, ...size });
}
