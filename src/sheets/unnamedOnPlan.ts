/** More names than this, some three lines of them, are a list in which nobody finds a piece. */
const MOST_LISTED = 40;

/**
 * What the layout plan says of the pieces that it has no room to name: it lists a few; of many it says how many, as the sheets of the
 * zones have all of them, by the numbers of their cuts.
 *
 * @example
 * unnamedOnPlan(['N3', 'N4']) // → { unnamed: ['N3', 'N4'], unnamedCount: 0 }
 */
export function unnamedOnPlan(names: readonly string[]) {
  const isLong = names.length > MOST_LISTED;
  return { unnamed: isLong ? [] : names, unnamedCount: isLong ? names.length : 0 };
}
