/** A piece on a list, and the piece from whose offcut it is sawn. */
export interface Waiting {
  readonly name: string;
  readonly from?: string | undefined;
}

/** The pieces of a group of which this is the number, or those of them that can be sawn by then. */
export interface Turn<T> {
  readonly group: number;
  readonly pieces: readonly T[];
}

/**
 * Groups of pieces in the order in which they can be sawn: as they stand, but each after the groups from whose offcuts its pieces come. Where
 * groups wait for one another the first gives what it can, and the rest of it comes when that can be sawn. What comes from a piece that is in
 * none of the groups does not wait.
 *
 * @example sawnAfter([[{ name: 'a', from: 'b' }], [{ name: 'b' }]]).map(({ group }) => group) //=> [1, 0]
 * @example sawnAfter([[{ name: 'a', from: 'c' }, { name: 'b' }], [{ name: 'c' }, { name: 'd', from: 'b' }]]).map(({ group }) => group) //=> [0, 1, 0]
 */
export function sawnAfter<T extends Waiting>(groups: readonly (readonly T[])[]): readonly Turn<T>[] {
  const open = new Set(groups.flat().map(({ name }) => name));
  const turns: Turn<T>[] = [];
  let left = groups.map((pieces, group) => ({ group, pieces })).filter(({ pieces }) => pieces.length > 0);
  while (left.length > 0) {
    const tries = left.map(({ group, pieces }) => ({ group, pieces: readyOf(pieces, open), all: pieces }));
    const some = tries.find(({ pieces }) => pieces.length > 0) ?? { ...tries[0]!, pieces: tries[0]!.all };
    const { group, pieces } = tries.find((one) => one.pieces.length === one.all.length) ?? some;
    turns.push({ group, pieces });
    for (const { name } of pieces) open.delete(name);
    const rest = (one: (typeof left)[number]) =>
      one.group === group ? { group, pieces: one.pieces.filter((piece) => !pieces.includes(piece)) } : one;
    left = left.map(rest).filter((one) => one.pieces.length > 0);
  }
  return turns;
}

/** The pieces of a group that wait for none that is still to be sawn elsewhere. */
function readyOf<T extends Waiting>(pieces: readonly T[], open: ReadonlySet<string>): readonly T[] {
  const own = new Set(pieces.map(({ name }) => name));
  return pieces.filter(({ from }) => from === undefined || own.has(from) || !open.has(from));
}
