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
    ...(typeof figures.drain === 'string' ? { drain: sayKind(context.say, figures.drain) } : {}),
  });
}
