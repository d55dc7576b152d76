import { leaningFloor } from './leaningFloor.ts';
import type { PatternFamily } from './patternFamilies.ts';

/** A job file for a floor of a family that is out of square; sizes in inches. */
export function familyFloor({ tiles, pattern }: PatternFamily, wide: number, deep: number): string {
  const kinds = Object.entries(tiles).map(
    ([key, size]) =>
      `  ${key}: {name: ${key}, ${size}, thick: 3/8 in, edge: rectified, turns: any, material: porcelain, box: {pieces: 10}}\n`,
  );
  return leaningFloor({ tile: '12 in x 12 in', wide, deep, pattern }).replace(
    /tile:\n[\s\S]*?\njoint:/,
    () => `tile:\n${kinds.join('')}joint:`,
  );
}
