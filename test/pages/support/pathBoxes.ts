import { OPS } from '../../support/pdfLibrary.ts';
import type { Box } from './PrintedPage.ts';

type Matrix = readonly [number, number, number, number, number, number];

const start: Matrix = [1, 0, 0, 1, 0, 0];

/** ISO 32000-1, 8.3.4: the newer matrix is applied first. */
function times(newer: Matrix, older: Matrix): Matrix {
  const [a, b, c, d, e, f] = newer;
  const [A, B, C, D, E, F] = older;
  return [a * A + b * C, a * B + b * D, c * A + d * C, c * B + d * D, e * A + f * C + E, e * B + f * D + F];
}

function placed([x0, y0, x1, y1]: readonly number[], [a, b, c, d, e, f]: Matrix): Box {
  const corners = [
    [x0, y0],
    [x1, y0],
    [x0, y1],
    [x1, y1],
  ] as const;
  const xs = corners.map(([x = 0, y = 0]) => a * x + c * y + e);
  const ys = corners.map(([x = 0, y = 0]) => b * x + d * y + f);
  return { left: Math.min(...xs), right: Math.max(...xs), bottom: Math.min(...ys), top: Math.max(...ys) };
}

/** Outer boxes on the page of all paths in a list of drawing operators. */
export function pathBoxes(list: {
  readonly fnArray: readonly number[];
  readonly argsArray: readonly unknown[];
}): readonly Box[] {
  const boxes: Box[] = [];
  const stack: Matrix[] = [];
  let matrix = start;
  for (const [at, operator] of list.fnArray.entries()) {
    const args = list.argsArray[at] as readonly unknown[] | null;
    if (operator === OPS.save) stack.push(matrix);
    if (operator === OPS.restore) matrix = stack.pop() ?? start;
    if (operator === OPS.transform) matrix = times(args as unknown as Matrix, matrix);
    const bounds = operator === OPS.constructPath ? (args?.[2] as ArrayLike<number> | null) : null;
    if (bounds) boxes.push(placed(Array.from(bounds), matrix));
  }
  return boxes;
}
