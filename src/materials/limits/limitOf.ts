import type { Fact, Limit } from '../../trade/index.ts';

/** Marker in place of a found value for what is checked on the floor, not at the desk. */
export const ON_SITE = 'onSite';

/** A limit whose mark and source are those of the fact it rests on. */
export function limitOf(fact: Fact<unknown>, rest: Omit<Limit, 'mark' | 'source'>): Limit {
  return { ...rest, mark: fact.mark, source: fact.source };
}
