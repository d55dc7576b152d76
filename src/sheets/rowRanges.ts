/** From so many on, rows that are numbered evenly are told by their first and last; those that step on by more than one, from more on. */
const FEWEST = { each: 3, other: 4 } as const;

/** A row's name as its letters, its number and the letter of a part of it. */
interface RowName {
  readonly letters: string;
  readonly number: number;
}

/** Names without a number follow no other. */
function partsOf(name: string): RowName {
  const [, before = '', number = '', after = ''] = /^(\D*)(\d+)(\D*)$/.exec(name) ?? [];
  return number === ''
    ? { letters: name, number: Number.NaN }
    : { letters: `${before} ${after}`, number: Number(number) };
}

/** How many names from one on bear the same letters and are numbered on by the same step, and that step. */
function runFrom(rows: readonly RowName[], from: number): { readonly count: number; readonly step: number } {
  const [first, second] = [rows[from]!, rows[from + 1]];
  if (second?.letters !== first.letters) return { count: 1, step: 0 };
  const step = second.number - first.number;
  let count = 2;
  for (let next = rows[from + count]; next?.letters === first.letters; next = rows[from + count]) {
    if (next.number !== first.number + count * step) break;
    count += 1;
  }
  return { count, step: Math.abs(step) };
}

/** Rows from a first to a last whose numbers follow one another by a step; one row where both are the same. */
export interface RowRange {
  readonly first: string;
  readonly last: string;
  readonly step: number;
}

/**
 * Names of rows as ranges, so that whoever counts on from the first by the step finds these and no other. A range ends where the letters
 * change.
 *
 * @example rowRanges(['K1', 'K2', 'K3', 'K6']).map(({ first, last }) => `${first}-${last}`) //=> ['K1-K3', 'K6-K6']
 * @example rowRanges(['K1', 'K3', 'K5', 'K7']) //=> [{ first: 'K1', last: 'K7', step: 2 }]
 * @example rowRanges(['M3', 'M2', 'M1', 'K1']).map(({ last }) => last) //=> ['M1', 'K1']
 */
export function rowRanges(names: readonly string[]): readonly RowRange[] {
  const rows = names.map(partsOf);
  const ranges: RowRange[] = [];
  for (let i = 0; i < names.length; ) {
    const run = runFrom(rows, i);
    const isRange = run.count >= (run.step === 1 ? FEWEST.each : FEWEST.other);
    const count = isRange ? run.count : 1;
    ranges.push({ first: names[i]!, last: names[i + count - 1]!, step: isRange ? run.step : 1 });
    i += count;
  }
  return ranges;
}
