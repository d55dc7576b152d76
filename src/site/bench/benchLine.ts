import type { Step } from './Step.ts';

/**
 * The middle value, the lower of the two where there is an even number; 0 of none.
 *
 * @example
 * median([3, 1, 2]) //=> 2
 */
export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor((sorted.length - 1) / 2)] ?? 0;
}

function row(cells: readonly [string, string, string, string]): string {
  const [name, found, target, count] = cells;
  return `${name.padEnd(56)}${found.padStart(10)}${target.padStart(11)}  ${count}`.trimEnd();
}

/** The head of the table. */
export const benchHead = row(['figure', 'median', 'target', 'of']);

/** One line of the table; a figure over its target is marked. */
export function benchLine({ name, unit, target }: Omit<Step, 'measure'>, values: readonly number[]): string {
  const found = median(values);
  const wish = target === undefined ? '' : `${target} ${unit}`;
  const over = target !== undefined && found > target ? '  over the target' : '';
  return row([name, `${Math.round(found)} ${unit}`, wish, `${values.length}${over}`]);
}
