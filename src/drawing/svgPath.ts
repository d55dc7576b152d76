import { type CurveFactory, line } from 'd3-shape';
import type { Mark, Step } from './Mark.ts';

/** What a curve may draw with; the types of d3-shape name the browser's canvas, which isn't at hand here. */
interface Pen {
  readonly moveTo: (x: number, y: number) => void;
  readonly lineTo: (x: number, y: number) => void;
  readonly arc: (x: number, y: number, radius: number, from: number, to: number, back: boolean) => void;
  readonly closePath: () => void;
}

/** A curve that follows the steps themselves: straight to a corner, round an arc, back to the start where closed. */
function along(steps: readonly Step[], height: number, closed: boolean): CurveFactory {
  return (context) => {
    const pen = context as unknown as Pen;
    let next = 0;
    return {
      areaStart() {},
      areaEnd() {},
      lineStart() {
        next = 0;
      },
      lineEnd() {
        if (closed) pen.closePath();
      },
      point(x, y) {
        const step = steps[next]!;
        next += 1;
        if ('centre' in step) {
          const { centre, radius, from, to } = step;
          pen.arc(centre[0], height - centre[1], radius, -from, -to, to > from);
        } else if (next === 1) pen.moveTo(x, y);
        else pen.lineTo(x, y);
      },
    };
  };
}

/** Where a step ends. */
function endOf(step: Step): readonly [number, number] {
  if (!('centre' in step)) return step;
  const { centre, radius, to } = step;
  return [centre[0] + radius * Math.cos(to), centre[1] + radius * Math.sin(to)];
}

/** Rounded by d3-shape to three decimals of a millimetre. */
function trace(steps: readonly Step[], height: number, closed: boolean): string {
  const follow = line<Step>()
    .x((step) => endOf(step)[0])
    .y((step) => height - endOf(step)[1])
    .curve(along(steps, height, closed));
  return follow([...steps]) ?? '';
}

/** The `d` of closed rings on a drawing `height` mm high, y turned down. */
export function svgRings(rings: readonly (readonly Step[])[], height: number): string {
  return rings.map((ring) => trace(ring, height, true)).join('');
}

/** The last path of a mark: an area is written for its hatch and then for its line, on the same drawing. */
const written = new WeakMap<Mark, { readonly height: number; readonly d: string }>();

/** The `d` of a mark that is drawn; empty for words. */
export function svgPath(mark: Mark, height: number): string {
  const last = written.get(mark);
  if (last?.height === height) return last.d;
  const d = pathOf(mark, height);
  written.set(mark, { height, d });
  return d;
}

function pathOf(mark: Mark, height: number): string {
  if (mark.mark === 'area') return svgRings(mark.rings, height);
  if (mark.mark === 'path') return trace(mark.steps, height, false);
  if (mark.mark !== 'circle') return '';
  const { centre, radius } = mark;
  const start = [centre[0] + radius, centre[1]] as const;
  return trace([start, { centre, radius, from: 0, to: 2 * Math.PI }], height, true);
}
