import { line } from 'd3-shape';
import { type Hatch, type HatchName, hatches } from './hatches.ts';
import type { Mark } from './Mark.ts';

/** One repeat of a hatch: lines run from edge to edge through its middle, so that repeats join. */
function pattern(name: HatchName, id: string): string {
  const hatch: Hatch = hatches[name];
  const { size, turn, width, dot } = hatch;
  const half = size / 2;
  const ends = { across: [[half, 0], [half, size]], along: [[0, half], [size, half]] } as const; // biome-ignore format: two lines
  const paths = hatch.lines.map((way) => line()(ends[way].map(([x, y]): [number, number] => [x, y])));
  const lines = width > 0 ? `<path d="${paths.join('')}" stroke="#000" stroke-width="${width}"/>` : '';
  const dots = dot ? `<circle cx="${size / 2}" cy="${size / 2}" r="${dot / 2}"/>` : '';
  const turned = turn ? ` patternTransform="rotate(${turn})"` : '';
  return `<pattern id="${id}-${name}" patternUnits="userSpaceOnUse" width="${size}" height="${size}"${turned}>${lines}${dots}</pattern>`;
}

/** The hatches that the marks use, under names that begin with the drawing's id. */
export function svgHatches(marks: readonly Mark[], id: string): string {
  const used = new Set(marks.map((mark) => ('fill' in mark ? mark.fill : undefined)));
  const names = (Object.keys(hatches) as HatchName[]).filter((name) => used.has(name));
  return names.length === 0 ? '' : `<defs>${names.map((name) => pattern(name, id)).join('')}</defs>`;
}
