import type { Limit } from '../trade/index.ts';
import type { SheetContext } from './SheetContext.ts';
import { sayApart } from './sayApart.ts';
import { sayKind } from './sayKind.ts';
import { sayThing } from './sayThing.ts';

/** What would pass a limit, as a sentence; layers that it names have their usual names. */
export function wouldPassText(
  context: SheetContext,
  { code, figures }: NonNullable<Limit['wouldPass']>,
): string {
  const { layers } = figures;
  const named =
    typeof layers === 'string'
      ? layers
          .split(', ')
          .map((one) => sayThing(context.say, one))
          .join(', ')
      : undefined;
  return context.say(code, {
    ...sayApart(context, figures),
    ...(named === undefined ? {} : { layers: named }),
    ...(typeof figures.drain === 'string' ? { drain: sayKind(context.say, figures.drain) } : {}),
  });
}
