import type { Say } from './SheetView.ts';

/** Sources that are not a publication: the catalogue has words for them. */
const OWN: ReadonlySet<string> = new Set([
  'job',
  'default',
  'practice',
  'sheetFirst',
  'memory',
  'geometry',
  'layout',
  'pace',
  'twoDays',
]);

/** Where a figure comes from: a publication is quoted as it is, anything else is said. */
export function saySource(say: Say, source: string): string {
  return OWN.has(source) ? say(`source.${source}`) : source;
}
