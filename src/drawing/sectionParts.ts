import type { Layer } from '../job/Job.ts';
import { type Notation, printLength, type Ticks } from '../measure/index.ts';
import type { Packet } from '../packet/Packet.ts';
import type { Fill } from './hatches.ts';
import { keepApart } from './keepApart.ts';
import type { Mark } from './Mark.ts';
import { rectangle } from './shapes.ts';
import { cross } from './signs.ts';
import { path, sizes, text } from './text.ts';

/** What a section is made of: the layers and the heights that follow from them, and whether any jamb is cut to the last of them. */
export type SectionOf = Pick<Packet, 'base' | 'heights'> & { readonly isUndercut: boolean };

/** How a section is drawn: mm of paper for a tick, size of its words. */
export interface SectionLook extends Notation {
  readonly perTick: number;
  readonly size: number;
}

/** Width of a column, where its words begin, and the least distance of two lines of words, in mm. */
const column = 22;
const words = 4;
const apart = 5.2;
/** Depth of the base that is shown, and how far from the tile's face a measured height is still drawn. */
const baseDeep = 7;
const farthest = 40;
/** The block under the saw, and how much of a jamb is shown over it. */
const block = 16;
const jambHigh = 12;

/** A layer as it lies, and whether it comes up. */
export interface Laid {
  readonly layer: Layer;
  readonly gone: boolean;
}

interface Band extends Laid {
  readonly bottom: number;
  readonly top: number;
}

export const thickness = (layers: readonly Layer[]): Ticks =>
  layers.reduce((sum, layer) => sum + layer.thickness, 0);

/** Layers one on the other from the bare base, in mm of paper. */
function bandsOf(layers: readonly Laid[], perTick: number): readonly Band[] {
  return layers.map(({ layer, gone }, i) => {
    const below = thickness(layers.slice(0, i).map((one) => one.layer));
    return { layer, gone, bottom: below * perTick, top: (below + layer.thickness) * perTick };
  });
}

const fills: readonly Fill[] = ['paper', 'cut', 'paper', 'hidden'];

function bandMarks(
  { layer, bottom, top, gone }: Band,
  i: number,
  level: number,
  look: SectionLook,
): readonly Mark[] {
  const middle = (bottom + top) / 2;
  return [
    rectangle([0, bottom], column, top - bottom, {
      line: gone ? 'fullTile' : 'thin',
      fill: gone ? 'paper' : fills[i % fills.length]!,
    }),
    ...(gone && top - bottom > 1.5 ? cross([column / 2, middle], Math.min(3, (top - bottom) / 2)) : []),
    path([[column, middle], [column + words - 1, level]], 'leader'), // biome-ignore format: two ends
    text([column + words, level], `${layer.name} ${printLength(layer.thickness, look)}`, {
      size: look.size,
      anchor: 'start',
    }),
  ];
}

/** A column of layers on the bare base, each with its name and thickness right of it, and a title below. */
export function layerColumn(
  layers: readonly Laid[],
  below: string,
  title: string,
  look: SectionLook,
): readonly Mark[] {
  const bands = bandsOf(layers, look.perTick);
  const levels = keepApart(
    bands.map(({ bottom, top }) => (bottom + top) / 2),
    apart,
  );
  const lowest = Math.min(-baseDeep / 2, ...levels.map((level) => level - apart));
  return [
    rectangle([0, -baseDeep], column, baseDeep, { fill: 'wall' }),
    path([[-3, 0], [column + 3, 0]], 'wall'), // biome-ignore format: two ends
    text([column + words, lowest], below, { size: look.size, anchor: 'start' }),
    ...bands.flatMap((band, i) => bandMarks(band, i, levels[i]!, look)),
    text([column / 2, -baseDeep - 5], title, { size: sizes.note, weight: 700 }),
  ];
}

/** Heights of doors, flanges and floors against the face of the new tile, left of the column of new layers; an opening is none. */
export function heightMarks({ heights }: SectionOf, face: number, look: SectionLook): readonly Mark[] {
  const near = heights.results.filter(
    ({ kind, after }) => kind !== 'appliance' && Math.abs(after * look.perTick) <= farthest,
  );
  const levels = keepApart(
    near.map(({ after }) => face + after * look.perTick),
    apart,
  );
  return near.flatMap(({ name, after }, i) => {
    const y = face + after * look.perTick;
    return [
      path([[-6, y], [column + 2, y]], 'opening'), // biome-ignore format: two ends
      path([[-7.5, levels[i]!], [-6, y]], 'leader'), // biome-ignore format: two ends
      text([-8, levels[i]!], `${name} ${after > 0 ? '+' : ''}${printLength(after, look)}`, {
        size: look.size,
        anchor: 'end',
      }),
    ];
  });
}

/** The block that carries the saw when jambs are cut, on the floor that the new layers will lie on, and the jamb over it. */
export function undercutBlock(
  { base, heights }: SectionOf,
  title: string,
  look: SectionLook,
): readonly Mark[] {
  const floor = thickness(base.kept) * look.perTick;
  const top = floor + heights.undercut * look.perTick;
  return [
    rectangle([0, -baseDeep], block, baseDeep, { fill: 'wall' }),
    ...(floor > 0 ? [rectangle([0, 0], block, floor, { line: 'thin', fill: 'paper' })] : []),
    path([[-3, 0], [block + 3, 0]], 'wall'), // biome-ignore format: two ends
    rectangle([0, floor], block, top - floor, { line: 'box', fill: 'paper' }),
    rectangle([3, top], block - 6, jambHigh, { fill: 'cut' }),
    ...[3, block - 3].map((x) => path([[x, top], [x, top + jambHigh]], 'fixture')), // biome-ignore format: two ends
    path([[1, top], [block - 1, top]], 'sawn'), // biome-ignore format: two ends
    text([block + 2, (floor + top) / 2], printLength(heights.undercut, look), {
      size: sizes.note,
      weight: 700,
      anchor: 'start',
    }),
    text([block / 2, -baseDeep - 5], title, { size: sizes.note, weight: 700 }),
  ];
}
