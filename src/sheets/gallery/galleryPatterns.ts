import type { PatternSpec, TileShape, TileSpec } from '../../job/Job.ts';
import type { Ticks } from '../../measure/index.ts';

/** A pattern as the gallery shows it: how it is written in the job file, and with which tiles. */
export interface GalleryPattern {
  /** Key of its words: the pattern's name, or that of a way to lay it. */
  readonly name: PatternSpec['name'] | 'checker' | 'doubleHerringbone';
  readonly written: string;
  readonly spec: PatternSpec;
  readonly tiles: readonly TileSpec[];
}

type Size = readonly [key: string, length: Ticks, width: Ticks, shape?: TileShape];

/** Every pattern with tiles on a unit, each side a number of units less one joint where that is what closes it; ticks. */
export function galleryPatterns(unit: Ticks, joint: Ticks): readonly GalleryPattern[] {
  const sides = (key: string, long: number, short: number): Size => [
    key,
    long * unit - joint,
    short * unit - joint,
  ];
  const half = Math.round(unit / 2) - joint;
  const corner = Math.round(unit / 4);
  const dot = Math.round(Math.SQRT2 * corner - (2 - Math.SQRT2) * joint);
  const rise = Math.round(unit * 1.5);
  const slanted = (hand: 'left' | 'right'): Size => [
    hand,
    rise,
    rise + half,
    { kind: 'chevron', rise, hand },
  ];
  const chips = { repeat: [[5, 0], [2, 1]], places: [{ tile: 'long', at: [0, 0], stands: false }, { tile: 'chip', at: [4, 0], stands: false }] } as const; // biome-ignore format: a repeat on a line
  return [
    entry('straight', 'straight', [sides('field', 1, 1)]),
    entry('running', 'running 1/3', [sides('field', 2, 1)], { offset: { numerator: 1, denominator: 3 } }),
    entry('checker', '{straight: , checker: [white, black]}', [sides('white', 1, 1), sides('black', 1, 1)], {
      name: 'straight',
      checker: ['white', 'black'],
    }),
    entry('herringbone', 'herringbone', [sides('field', 3, 1)], { group: 1 }),
    entry('doubleHerringbone', '{herringbone: double}', [sides('field', 3, 1)], {
      name: 'herringbone',
      group: 2,
    }),
    entry('basketweave', 'basketweave', [sides('field', 2, 1)], { group: 2 }),
    entry('twoSquares', 'two squares', [sides('large', 2, 2), sides('small', 1, 1)]),
    entry('windmill', 'windmill', [sides('long', 2, 1), sides('middle', 1, 1)]),
    entry('threeSizes', 'three sizes', [sides('large', 2, 2), sides('oblong', 2, 1), sides('small', 1, 1)]),
    entry('fourSizes', 'four sizes', [
      sides('largest', 3, 2),
      sides('large', 2, 2),
      sides('oblong', 2, 1),
      sides('small', 1, 1),
    ]),
    entry('hexagon', 'hexagon', [
      ['field', unit, Math.round((2 * unit) / Math.sqrt(3)), { kind: 'hexagon' }],
    ]),
    entry('octagonAndDot', 'octagon and dot', [
      ['octagon', unit, unit, { kind: 'octagon', corner }],
      ['dot', dot, dot],
    ]),
    entry('rhombus', 'rhombus', [['field', Math.round(unit * 1.5), unit, { kind: 'rhombus' }]]),
    entry('chevron', 'chevron', [slanted('right'), slanted('left')]),
    entry('pennyRound', 'penny round', [['field', half, half, { kind: 'round' }]]),
    entry('own', '{own: {repeat: [[5, 0], [2, 1]], tiles: [{tile: long, at: [0, 0]}, {tile: chip, at: [4, 0]}]}}', [sides('long', 4, 1), sides('chip', 1, 1)], { own: chips }), // biome-ignore format: as it is written
  ];
}

function entry(
  name: GalleryPattern['name'],
  written: string,
  sizes: readonly Size[],
  more: Partial<PatternSpec> = {},
): GalleryPattern {
  const own = name as PatternSpec['name'];
  const keys = sizes.map(([key]) => key);
  const several = keys.length > 1 && !more.checker;
  const lies = { turnedDeg: 0, along: 'A-B' };
  const spec = { name: own, tile: keys[0]!, ...(several && { tiles: keys }), ...lies, ...more };
  return { name, written, spec, tiles: sizes.map(tileOf) };
}

/** Only its size and shape say anything here. */
function tileOf([key, length, width, shape]: Size): TileSpec {
  return {
    key,
    name: key,
    readings: [[length, width]],
    length,
    width,
    spread: 0,
    thickness: 0,
    edge: 'rectified',
    bow: 0,
    turns: 'any',
    material: 'porcelain',
    glazed: true,
    onHand: 0,
    ...(shape && { shape }),
  };
}
