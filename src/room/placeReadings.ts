import type { Point, Ring } from '../geometry/index.ts';
import type { FlatnessGrid } from '../job/Job.ts';
import type { Problem } from '../job/Problem.ts';
import type { Complain } from './complainer.ts';
import { onFloor } from './onFloor.ts';
import type { PlacedReading } from './PlacedBase.ts';
import { pointFromWalls, type WallLine } from './wallLine.ts';

/** No more readings than this are named in a problem. */
const mostNamed = 6;

/** Where the readings of a grid lie; those off the floor are one problem that names them by row and number. */
export function placeReadings(
  grid: FlatnessGrid,
  walls: readonly WallLine[],
  outline: Ring,
  complain: Complain,
): { readonly readings: readonly PlacedReading[]; readonly problems: readonly Problem[] } {
  const [first, second] = grid.walls.map((name) => walls.find(({ id }) => id === name));
  const start = first && second && pointFromWalls(first, grid.first[0], second, grid.first[1]);
  if (!start) return { readings: [], problems: [] };
  const away = first.along[0] * second.into[0] + first.along[1] * second.into[1] > 0 ? 1 : -1;
  const at = (row: number, number: number): Point => {
    const [u, v] = [number * grid.every * away, row * grid.every];
    return [
      Math.round(start[0] + u * first.along[0] + v * first.into[0]) + 0,
      Math.round(start[1] + u * first.along[1] + v * first.into[1]) + 0,
    ];
  };
  const readings = grid.heights.flatMap((heights, row) =>
    heights.flatMap((height, number): PlacedReading[] =>
      height === null ? [] : [{ row: row + 1, number: number + 1, at: at(row, number), height }],
    ),
  );
  const off = readings.filter((reading) => !onFloor(reading.at, outline));
  if (off.length === 0) return { readings, problems: [] };
  const named = off.slice(0, mostNamed).map(({ row, number }) => `${row}/${number}`);
  const figures = {
    readings: named.join(', ') + (off.length > named.length ? ' …' : ''),
    floor: grid.surface,
    first: grid.walls[0],
    second: grid.walls[1],
    firstDistance: complain.text(grid.first[0]),
    secondDistance: complain.text(grid.first[1]),
    every: complain.text(grid.every),
  };
  return {
    readings: [],
    problems: [complain('flatnessOffFloor', ['flatness grid'], named.join(', '), figures)],
  };
}
