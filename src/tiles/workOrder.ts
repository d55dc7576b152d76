import type { CutClass } from './CutClass.ts';

/** When each piece is set: by class and place in it, counted over all pieces that are sawn. */
export type WorkOrder = readonly (readonly number[])[];

/**
 * Numbers the sawn pieces in the order in which they are set.
 *
 * @param names all pieces as they are set, named as the classes name them; those not among them come after, as they stand.
 * @example workOrder([{ pieces: ['a', 'b'] }, { pieces: ['c'] }], ['b', 'x', 'c', 'a']) //=> [[2, 0], [1]]
 */
export function workOrder(classes: readonly Pick<CutClass, 'pieces'>[], names: readonly string[]): WorkOrder {
  const place = new Map(names.map((name, i) => [name, i]));
  const sawn = classes.flatMap(({ pieces }) => pieces);
  const sorted = sawn
    .map((name, i) => ({ name, at: place.get(name) ?? names.length + i }))
    .sort((a, b) => a.at - b.at);
  const when = new Map(sorted.map(({ name }, i) => [name, i]));
  return classes.map(({ pieces }) => pieces.map((name) => when.get(name)!));
}
