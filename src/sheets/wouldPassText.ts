import type { Limit } from '../trade/index.ts';
import { layersSaid } from './layersSaid.ts';
import type { SheetContext } from './SheetContext.ts';
import { sayApart } from './sayApart.ts';
import { sayKind } from './sayKind.ts';

/** What would pass a limit, as a sentence; layers that it names have their usual names. */
export function wouldPassText(
  context: SheetContext,
  { code, figures }: NonNullable<Limit['wouldPass']>,
): string {
  return context.say(code, {
    ...sayApart(context, figures),
    ...layersSaid(context.say, figures),
    ...named(context, figures),
  });
}

/** Figures that are drains, by what they are called on the sheets. */
const DRAINS = ['drain', 'other'] as const;

function named({ say }: SheetContext, figures: NonNullable<Limit['wouldPass']>['figures']) {
  const drains = DRAINS.flatMap((key) => {
    const name = figures[key];
    return typeof name === 'string' ? [[key, sayKind(say, name)]] : [];
  });
  return Object.fromEntries(drains);
}
