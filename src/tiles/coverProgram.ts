import { type Group, type Prices, pairsOf } from './Prices.ts';

/** How much of each row one tile of a kind gives: classes first, then groups. */
export type Column = readonly (readonly [row: number, amount: number])[];

export interface CoverProgram {
  readonly add: (classes: readonly number[]) => void;
  /** Exchanges columns until none lowers the sum, or the pivots run out. */
  readonly solve: (pivots: { left: number }) => void;
  readonly prices: () => Prices;
  /** How many of each column are taken, parts of one too, by the column's place; those of single classes come first. */
  readonly taken: () => readonly { readonly column: number; readonly amount: number }[];
}

/**
 * The linear programme of covering: as few tiles as can be, each of a column's kind, so that all pieces of every class come out
 * of them, where parts of a tile count. Groups are further rows, which whole tiles keep and parts of tiles may not.
 *
 * The wants are made unequal by less than a ten-thousandth, so that exchanges cannot run in a circle. Prices that result are
 * checked in whole numbers before they serve as proof, so nothing hangs on that.
 */
export function coverProgram(counts: readonly number[], groups: readonly Group[]): CoverProgram {
  const columns: Column[] = counts.map((_, id) => columnOf([id], groups, counts.length));
  const basis = makeBasis(counts, groups, columns);
  return {
    add: (classes) => columns.push(columnOf(classes, groups, counts.length)),
    solve: (pivots) => {
      let now = basis.sums();
      for (let turn = 1; pivots.left > 0; turn++) {
        const what = bestToEnter(columns, now);
        if (what === undefined || !basis.enter(what, what < 0 ? [[-1 - what, -1]] : columns[what]!, now))
          return;
        pivots.left -= now.length * now.length;
        // Prices are carried on from pivot to pivot, and made anew now and then, before rounding adds up.
        if (turn % 50 === 0) now = basis.sums();
      }
    },
    prices: () => {
      const sums = basis.sums();
      return {
        each: counts.map((_, id) => Math.max(0, sums[id]!)),
        groups: groups.map((of, i) => ({ of, price: Math.max(0, sums[counts.length + i]!) })),
      };
    },
    taken: basis.taken,
  };
}

function columnOf(classes: readonly number[], groups: readonly Group[], first: number): Column {
  const ids = [...new Set(classes)];
  const count = (of: readonly number[]) => classes.filter((id) => of.includes(id)).length;
  return [
    ...ids.map((id) => [id, count([id])] as const),
    ...groups.flatMap((of, i) => (count(of) > 0 ? [[first + i, Math.ceil(count(of) / 2)] as const] : [])),
  ];
}

/** The column that saves most a piece of it, or -1 - row where less of a row saves more. */
function bestToEnter(columns: readonly Column[], prices: Float64Array): number | undefined {
  let [what, gain]: [number | undefined, number] = [undefined, 1e-7];
  for (let i = 0; i < columns.length; i++) {
    let over = -1;
    for (const [row, amount] of columns[i]!) over += prices[row]! * amount;
    if (over > gain) [what, gain] = [i, over];
  }
  for (let row = 0; row < prices.length; row++)
    if (-prices[row]! > gain) [what, gain] = [-1 - row, -prices[row]!];
  return what;
}

/** The columns in use, one a row, with the inverse of their matrix: at first one tile a piece. */
function makeBasis(counts: readonly number[], groups: readonly Group[], singles: readonly Column[]) {
  const n = counts.length + groups.length;
  const held = Array.from({ length: n }, (_, row) => (row < counts.length ? row : -1 - row));
  const inverse = held.map((_, row) => {
    const line = new Float64Array(n);
    line[row] = row < counts.length ? 1 : -1;
    return line;
  });
  for (const [id, column] of singles.entries())
    for (const [row, amount] of column) if (row >= counts.length) inverse[row]![id] = amount;
  const wanted = [...counts, ...groups.map((of) => pairsOf(of, counts))].map(
    (want, i) => want + (i < counts.length ? 1e-5 * (1 + ((i * 7919) % 101) / 101) : -1e-6),
  );
  const amounts = inverse.map((line) => line.reduce((sum, part, i) => sum + part * wanted[i]!, 0));
  const leaving = (moved: readonly number[]) => {
    let out = -1;
    for (let row = 0; row < n; row++) {
      if (moved[row]! <= 1e-9) continue;
      if (out < 0 || amounts[row]! / moved[row]! < amounts[out]! / moved[out]!) out = row;
    }
    return out;
  };
  const enter = (what: number, column: Column, prices: Float64Array): boolean => {
    const moved = inverse.map((line) => column.reduce((sum, [row, amount]) => sum + line[row]! * amount, 0));
    const out = leaving(moved);
    if (out < 0) return false;
    const pivot = inverse[out]!;
    for (let i = 0; i < n; i++) pivot[i]! /= moved[out]!;
    amounts[out]! /= moved[out]!;
    const saved = column.reduce((cost, [row, amount]) => cost - prices[row]! * amount, what < 0 ? 0 : 1);
    for (let i = 0; i < n; i++) prices[i]! += saved * pivot[i]!;
    for (let row = 0; row < n; row++) {
      const factor = moved[row]!;
      if (row === out || Math.abs(factor) <= 1e-12) continue;
      const line = inverse[row]!;
      for (let i = 0; i < n; i++) line[i]! -= factor * pivot[i]!;
      amounts[row]! -= factor * amounts[out]!;
    }
    held[out] = what;
    return true;
  };
  const sums = () => {
    const total = new Float64Array(n);
    for (let row = 0; row < n; row++) {
      if (held[row]! < 0) continue;
      const line = inverse[row]!;
      for (let i = 0; i < n; i++) total[i]! += line[i]!;
    }
    return total;
  };
  const taken = () =>
    held
      .map((column, row) => ({ column, amount: amounts[row]! }))
      .filter(({ column, amount }) => column >= 0 && amount > 1e-3);
  return { enter, sums, taken };
}
