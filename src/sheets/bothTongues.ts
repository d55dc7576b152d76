import type { SheetContext } from './SheetContext.ts';

/** A caution in the crew's languages, for a list that prints both; English that stands beside the first already is not said again. */
export function bothTongues({ say, second }: SheetContext, code: string): { first: string; second: string } {
  const first = say(code);
  const also = second?.say(code) ?? '';
  const beside = ` · ${also}`;
  return { first: also && first.endsWith(beside) ? first.slice(0, -beside.length) : first, second: also };
}
