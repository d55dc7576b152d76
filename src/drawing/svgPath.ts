import { type Path, pathRound } from 'd3-path';
import type { Mark, Step } from './Mark.ts';
import { decimals } from './roundMm.ts';

function trace(path: Path, steps: readonly Step[], height: number, closed: boolean): void {
  steps.forEach((step, i) => {
    if ('centre' in step) {
      const { centre, radius, from, to } = step;
      path.arc(centre[0], height - centre[1], radius, -from, -to, to > from);
    } else if (i === 0) path.moveTo(step[0], height - step[1]);
    else path.lineTo(step[0], height - step[1]);
  });
  if (closed) path.closePath();
}

/** The `d` of closed rings on a drawing `height` mm high, y turned down. */
export function svgRings(rings: readonly (readonly Step[])[], height: number): string {
  const path = pathRound(decimals);
  for (const ring of rings) trace(path, ring, height, true);
  return path.toString();
}

/** The `d` of a mark that is drawn; empty for words. */
export function svgPath(mark: Mark, height: number): string {
  const path = pathRound(decimals);
  if (mark.mark === 'area') return svgRings(mark.rings, height);
  if (mark.mark === 'path') trace(path, mark.steps, height, false);
  if (mark.mark === 'circle') {
    const [x, y] = [mark.centre[0], height - mark.centre[1]];
    path.moveTo(x + mark.radius, y);
    path.arc(x, y, mark.radius, 0, 2 * Math.PI);
    path.closePath();
  }
  return path.toString();
}
