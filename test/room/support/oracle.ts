import { Matrix, pseudoInverse } from 'ml-matrix';
import type { Point } from '../../../src/geometry/index.ts';
import { type BaseLine, seenFrom } from '../../../src/room/baseLine.ts';
import type { Observation } from '../../../src/room/observations.ts';

const distance = (a: Point, b: Point) => Math.hypot(b[0] - a[0], b[1] - a[1]);

/** What a reading should be in a room, by plain geometry. */
export function shouldRead(one: Observation, corners: readonly Point[], line?: BaseLine): number {
  if ('from' in one) return distance(corners[one.from]!, corners[one.to]!);
  const at = corners[one.corner]!;
  if (one.kind === 'baseLine') return seenFrom(line!, at)[one.axis === 'along' ? 0 : 1];
  const n = corners.length;
  const mark = (to: Point, leg: number): Point => {
    const share = leg / distance(at, to);
    return [at[0] + share * (to[0] - at[0]), at[1] + share * (to[1] - at[1])];
  };
  return distance(
    mark(corners[(one.corner + n - 1) % n]!, one.before),
    mark(corners[(one.corner + 1) % n]!, one.after),
  );
}

/** All coordinates, and of a line its origin and turn times a million. */
const toVector = (corners: readonly Point[], line?: BaseLine) => [
  ...corners.flat(),
  ...(line ? [...line.origin, line.turn * 1e6] : []),
];
function fromVector(values: readonly number[], corners: number, line?: BaseLine) {
  const points = Array.from({ length: corners }, (_, i): Point => [values[2 * i]!, values[2 * i + 1]!]);
  const [x, y, turn] = values.slice(2 * corners) as [number, number, number];
  return { points, line: line && { ...line, origin: [x, y] as const, turn: turn / 1e6 } };
}

/**
 * A fit as a general library sees it, at the corners found: design matrix by differences, nothing held fast, the singular normal
 * matrix inverted after Moore and Penrose. `gradient` is what is left to gain; `shares` are the redundancy numbers of the means.
 */
export function oracle(seen: readonly Observation[], corners: readonly Point[], line?: BaseLine) {
  const start = toVector(corners, line);
  const read = (values: readonly number[]) => {
    const placed = fromVector(values, corners.length, line);
    return seen.map((one) => shouldRead(one, placed.points, placed.line));
  };
  const step = 1;
  const columns = start.map((_, k) => {
    const at = (by: number) => read(start.map((value, i) => (i === k ? value + by : value)));
    const [up, down] = [at(step), at(-step)];
    return up.map((value, i) => (value - down[i]!) / (2 * step));
  });
  const design = new Matrix(columns).transpose();
  const weights = Matrix.diag(seen.map(({ sd, read: times }) => times.length / sd ** 2));
  const normal = design.transpose().mmul(weights).mmul(design);
  const misfits = Matrix.columnVector(seen.map(({ mean }, i) => mean - read(start)[i]!));
  const covariance = pseudoInverse(normal.mul(1e6)).mul(1e6);
  const ofReadings = design.mmul(covariance).mmul(design.transpose());
  return {
    gradient: design.transpose().mmul(weights).mmul(misfits).to1DArray(),
    shares: seen.map(({ sd, read: times }, i) => 1 - (ofReadings.get(i, i) * times.length) / sd ** 2),
    covariance: covariance.to2DArray(),
  };
}
