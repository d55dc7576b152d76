import { squareFloor } from './squareFloor.ts';

/** A floor that is out of square: sizes in inches; the pattern as a job file has it. */
export interface LeaningFloor {
  readonly tile: string;
  readonly wide: number;
  readonly deep: number;
  readonly pattern: string;
}

/** Sizes of eight rooms to 300 sq ft, in inches. */
export const roomSizes = [64, 85, 106, 127, 148, 169, 190, 207].map((wide, i) => ({
  wide,
  deep: 73 + 17 * i,
}));

/** A job file for a floor whose opposite walls differ by 1/2 in and 3/8 in, so that hardly two pieces along a wall are alike. */
export function leaningFloor({ tile, wide, deep, pattern }: LeaningFloor): string {
  const across = Math.round(8 * Math.hypot(wide - 0.25, deep)) / 8;
  const walls = `A-B: ${wide} in, B-C: ${deep} in, C-D: ${wide - 0.5} in, D-A: ${deep - 0.375} in`;
  return squareFloor({ tile: 12, wide, deep, turned: 0 })
    .replace(
      /walls: .*/,
      `walls: {${walls}}\n  diagonals: {A-C: ${across} in}\n  angles: {A: 90, B: 90, C: 90, D: 90}`,
    )
    .replace(/read: \[.*?\]/, `read: [${tile}]`)
    .replace(/pattern: .*/, `pattern: ${pattern}`);
}
