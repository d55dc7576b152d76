import { squareFloor } from './squareFloor.ts';

const letter = (i: number) => String.fromCharCode(65 + i);

/** A job file for a floor of equal sides round a middle, every wall and every diagonal read to an eighth of an inch. */
export function roundFloor(corners: number, radius: number): string {
  const read = (i: number, j: number) => {
    const length = 2 * radius * Math.abs(Math.sin((Math.PI * (j - i)) / corners));
    return `${letter(i)}-${letter(j % corners)}: ${Math.round(8 * length) / 8} in`;
  };
  const all = Array.from({ length: corners }, (_, i) => i);
  const walls = all.map((i) => read(i, i + 1));
  const diagonals = all.flatMap((i) =>
    all.filter((j) => j > i + 1 && j - i < corners - 1).map((j) => read(i, j)),
  );
  const angles = all.map((i) => `${letter(i)}: ${180 - 360 / corners}`);
  const plain = squareFloor({ tile: 12, wide: 120, deep: 120, turned: 0 });
  const own = `walls: {${walls.join(', ')}}
  diagonals: {${diagonals.join(', ')}}
  angles: {${angles.join(', ')}}`;
  return plain.replace(/walls: .*/, own);
}
