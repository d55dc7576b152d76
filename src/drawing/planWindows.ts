import { type Box, boxRoundAll } from './boxes.ts';
import type { Spot } from './Mark.ts';
import type { PlanPart, Side } from './PlanParts.ts';
import { holds } from './partOnPaper.ts';

/** A piece in the room's frame: what it takes, and where it is named. */
export interface Named {
  readonly box: Box;
  readonly pole: Spot;
}

/** What a page holds at most, in ticks. */
export interface Most {
  readonly width: number;
  readonly height: number;
}

/** A part before it has a number of its own, and the pieces that are named in it. */
interface Window {
  readonly column: number;
  readonly row: number;
  readonly window: Box;
  readonly own: readonly Named[];
}

/** Where lines that cut a length stand, its ends among them. */
type Lines = readonly number[];

/** How far full pages are moved along what they are to hold, as shares of the room they leave. */
const shifts = [0, 0.25, 0.5, 0.75, 1] as const;

/** A length in the fewest equal parts that fit, then with as many full ones, the first or the last of them smaller, or both. */
function waysToCut(from: number, to: number, most: number): readonly Lines[] {
  const count = Math.max(1, Math.ceil((to - from) / most - 1e-9));
  const at = (step: (i: number) => number) =>
    Array.from({ length: count + 1 }, (_, i) => Math.min(to, Math.max(from, step(i))));
  const equal = at((i) => from + ((to - from) * i) / count);
  const room = count * most - (to - from);
  return count === 1 ? [equal] : [equal, ...shifts.map((share) => at((i) => from - share * room + i * most))];
}

/** The windows in which pieces are named, each with these: what reaches into another is named where it comes from. */
function windowsOf(pieces: readonly Named[], columns: Lines, rows: Lines): readonly Window[] {
  const [wide, high] = [columns.length - 1, rows.length - 1];
  const all = Array.from({ length: wide * high }, (_, i): Window => {
    const [column, row] = [i % wide, high - 1 - Math.floor(i / wide)];
    const [left, right] = [columns[column]!, columns[column + 1]!];
    const window = { left, bottom: rows[row]!, right, top: rows[row + 1]! };
    return { column, row, window, own: pieces.filter(({ pole }) => holds(window, pole)) };
  });
  return all.filter(({ own }) => own.length > 0);
}

const steps: Readonly<Record<Side, readonly [number, number]>> = {
  left: [-1, 0],
  right: [1, 0],
  below: [0, -1],
  above: [0, 1],
};

/** The part with all of the pieces named in it where no other part joins it, as far as its page has room. */
function openedOut({ window, own }: Window, next: PlanPart['next'], most: Most): Box {
  const all = boxRoundAll([window, ...own.map(({ box }) => box)]);
  const wide = most.width - (window.right - window.left);
  const high = most.height - (window.top - window.bottom);
  const out = (side: Side, by: number, room: number) =>
    next[side] === undefined ? Math.max(0, Math.min(by, room)) : 0;
  const left = out('left', window.left - all.left, wide);
  const bottom = out('below', window.bottom - all.bottom, high);
  return {
    left: window.left - left,
    bottom: window.bottom - bottom,
    right: window.right + out('right', all.right - window.right, wide - left),
    top: window.top + out('above', all.top - window.top, high - bottom),
  };
}

function partsOf(windows: readonly Window[], most: Most): readonly PlanPart[] {
  return windows.map((one, i): PlanPart => {
    const sides = Object.entries(steps).flatMap(([side, [dx, dy]]) => {
      const at = windows.findIndex(({ column, row }) => column === one.column + dx && row === one.row + dy);
      return at >= 0 ? [[side, at + 1]] : [];
    });
    const next: PlanPart['next'] = Object.fromEntries(sides);
    return { number: i + 1, window: openedOut(one, next, most), next };
  });
}

/** Whether each piece is drawn whole by the part that names it, but for match lines. */
function areWhole(windows: readonly Window[], parts: readonly PlanPart[]): boolean {
  return windows.every(({ own }, i) => {
    const { window, next } = parts[i]!;
    const open = (side: Side, by: number) => next[side] !== undefined || by <= 1;
    return own.every(
      ({ box }) =>
        open('left', window.left - box.left) &&
        open('right', box.right - window.right) &&
        open('below', window.bottom - box.bottom) &&
        open('above', box.top - window.top),
    );
  });
}

/**
 * The fewest parts in which all of some pieces are named, of those of as many pages of a grid each way as cover a box: equal parts unless moved
 * ones leave out a page.
 */
export function planWindows(pieces: readonly Named[], box: Box, most: Most): readonly PlanPart[] {
  const across = waysToCut(box.left, box.right, most.width);
  const up = waysToCut(box.bottom, box.top, most.height);
  const [equal, ...moved] = across
    .flatMap((columns) => up.map((rows) => windowsOf(pieces, columns, rows)))
    .map((windows) => ({ windows, parts: partsOf(windows, most) }));
  const whole = moved.filter(({ windows, parts }) => areWhole(windows, parts));
  return [equal!, ...whole].reduce((best, one) => (one.parts.length < best.parts.length ? one : best)).parts;
}
