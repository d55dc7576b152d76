import type { BaseCheck } from '../materials/baseChecks.ts';
import { layersSaid } from './layersSaid.ts';
import type { SheetContext } from './SheetContext.ts';
import { sayFigures } from './sayFigures.ts';

/** What is known of the base and what follows, with what the letters of a moisture reading stand for. */
export function checkText(context: SheetContext, check: Pick<BaseCheck, 'code' | 'figures'>): string {
  const said = context.say(check.code, {
    ...sayFigures(context, check.figures),
    ...layersSaid(context.say, check.figures),
  });
  return [said, readBy(context, check)].filter(Boolean).join(' ');
}

/** What the letters of a moisture reading stand for; empty where there is none. */
export function readBy({ say }: SheetContext, { figures }: Pick<BaseCheck, 'figures'>): string {
  return figures.method === undefined ? '' : say(`base.moisture.by.${figures.method}`);
}
