import type { Job, PatternSpec, SurfaceSpec } from '../../../src/job/Job.ts';
import { inch } from '../../cuts/support/inches.ts';
import { testJob } from '../../cuts/support/testJob.ts';
import { chance } from '../../support/chance.ts';
import { surfaceOf, wallFacts } from '../../support/surfaceOf.ts';

/** Patterns that a room is laid in, with the nominal sizes of the tiles for each. */
export const FAMILIES: Readonly<
  Record<string, { readonly pattern: Partial<PatternSpec>; readonly tiles: readonly [number, number][] }>
> = {
  straight: { pattern: { name: 'straight' }, tiles: [[12, 12], [13, 13], [18, 18], [12, 24]] }, // biome-ignore format: a family on a line
  'half bond': { pattern: bond(2), tiles: [[24, 12], [12, 6]] }, // biome-ignore format: a family on a line
  'third plank': { pattern: bond(3), tiles: [[24, 6], [48, 8], [36, 6]] }, // biome-ignore format: a family on a line
  herringbone: { pattern: { name: 'herringbone' }, tiles: [[24, 12], [18, 6], [12, 4]] }, // biome-ignore format: a family on a line
  diagonal: { pattern: { name: 'straight', turnedDeg: 45 }, tiles: [[12, 12], [13, 13], [18, 18]] }, // biome-ignore format: a family on a line
  hexagon: { pattern: { name: 'hexagon' }, tiles: [[8, 8], [12, 12], [14, 14]] }, // biome-ignore format: a family on a line
};

function bond(denominator: number): Partial<PatternSpec> {
  return { name: 'running', offset: { numerator: 1, denominator }, stepping: 'stepping' };
}

/**
 * A room of up to 300 sq ft laid in a family: 2 in 5 rectangles, 2 in 5 with a corner less, 1 in 5 with a column; every second
 * one out of square, each corner moved by up to half an inch; one in seven of a tile that may be turned half round only, one of a tile
 * that may not be turned; offcuts under 1 in are not kept; no wall longer than `largest` inches. The same for the same seed.
 */
export function familyRoom(family: string, seed: number, largest = 200): { job: Job; surface: SurfaceSpec } {
  const { even, below } = chance(seed * 7919 + family.length);
  const { pattern, tiles } = FAMILIES[family]!;
  const sixteenths = (least: number, most: number) =>
    Math.round((least + even() * (most - least)) * 16) * 508;
  const w = sixteenths(60, largest);
  const h = sixteenths(60, Math.min(largest, (300 * 144 * 8128) / w));
  const kind = below(5);
  const [a, b] = [Math.round((w / 8128) * 0.4) * 8128, Math.round((h / 8128) * 0.4) * 8128];
  const square: [number, number][] =
    kind === 2 || kind === 3
      ? [[0, 0], [w, 0], [w, h - b], [w - a, h - b], [w - a, h], [0, h]] // biome-ignore format: a ring on a line
      : [[0, 0], [w, 0], [w, h], [0, h]]; // biome-ignore format: a ring on a line
  const half = () => Math.round((even() - 0.5) * 8128);
  const corners =
    seed % 2 === 0 ? square : square.map(([x, y]): [number, number] => [x + half(), y + half()]);
  const walls = corners.map((_, i) => String.fromCharCode(65 + i));
  const from = [
    { wall: 'A-B', distance: sixteenths(18, 30) },
    { wall: `${walls.at(-1)}-A`, distance: sixteenths(18, 30) },
  ] as const;
  const column = {
    ...wallFacts(),
    name: 'column',
    meets: 'column' as const,
    shape: { kind: 'rectangle' as const, along: sixteenths(4, 12), out: sixteenths(4, 12), from },
  };
  const surface = surfaceOf(corners, { pattern, obstacles: kind === 4 ? [column] : [] });
  const [length, width] = tiles[below(tiles.length)]!;
  const turns = seed % 7 === 3 ? 'half' : seed % 7 === 5 ? 'none' : 'any';
  const flats = inch(length - 1 / 8);
  const sides =
    pattern.name === 'hexagon'
      ? { length: flats, width: Math.round((flats * 2) / Math.sqrt(3)), shape: { kind: 'hexagon' as const } }
      : { length: flats, width: inch(width - 1 / 8) };
  const tile = { ...sides, turns } as const;
  const offcuts = { plan: 'fewestTiles', narrowest: inch(1) } as const;
  return { job: testJob({ joint: inch(1 / 8), surfaces: [surface], offcuts }, tile), surface };
}
