import type { Cut, CutSize } from '../cuts/Cut.ts';

type Sized = Pick<Cut, 'sizes' | 'edges'>;

/** What the two ends of a leaning side of a piece are called. */
const ENDS: readonly (readonly [string, string])[] = [
  ['leftLength', 'rightLength'],
  ['bottomLength', 'topLength'],
];

/**
 * Sizes that tell the two ends of one leaning saw line, by each other: their figures are near alike, so that each is read rightly only at its own end.
 *
 * @example
 * pairedSizes({ edges: [], sizes: [{ what: 'leftLength', from: 'bottom', exact: 90, saw: 90, at: [[0, 0], [0, 90]] }] }).size //=> 0
 */
export function pairedSizes({ sizes, edges }: Sized): ReadonlyMap<CutSize, CutSize> {
  return new Map(
    sizes.flatMap((size): (readonly [CutSize, CutSize])[] => {
      const mate = sizes.find(
        (other) => other !== size && other.from === size.from && tellOneLine(size, other, edges),
      );
      return mate ? [[size, mate]] : [];
    }),
  );
}

function tellOneLine(one: CutSize, other: CutSize, edges: Cut['edges']): boolean {
  if (ENDS.some((ends) => ends.includes(one.what) && ends.includes(other.what)))
    return one.what !== other.what;
  const ends = [`${one.at[1]}`, `${other.at[1]}`];
  return (
    one.what === other.what &&
    edges.some(({ from, to, factory }) => !factory && ends.includes(`${from}`) && ends.includes(`${to}`))
  );
}
