import type { CareLine } from '../care/Care.ts';
import type { Sheet } from './Sheet.ts';
import type { SheetContext } from './SheetContext.ts';
import { sayFigures } from './sayFigures.ts';

/** What the owner does today, this month and in a year, for this tile, grout and sealer. */
export const careSheet: Sheet = {
  name: 'care-sheet',
  for: 'owner',
  bundles: ['owner', 'packet'],
  speaks: 'owner',
  make: (context) => {
    const { care, spec, tiles } = context.packet;
    const { dates } = care;
    return [
      {
        data: {
          walk: context.time(dates.walk),
          wet: context.time(dates.wet),
          sealFrom: dates.sealFrom ? context.time(dates.sealFrom) : '',
          sealTo: dates.sealTo ? context.time(dates.sealTo) : '',
          sealNeeded: care.seal.needed,
          checkMonths: dates.checkAgainMonths ?? 0,
          dos: care.dos.map((line) => sayCare(context, line)),
          donts: care.donts.map((line) => sayCare(context, line)),
          cautions: care.cautions.map((line) => sayCare(context, line)),
          used: care.used.map((line) => sayCare(context, line)),
          keep: Object.values(tiles).reduce((sum, plan) => sum + plan.keep, 0),
          setter: spec.contacts.setter ?? '',
          phone: spec.contacts.phone ?? '',
        },
      },
    ];
  },
};

function sayCare(context: SheetContext, { code, figures }: CareLine) {
  return { code, text: context.say(code, sayFigures(context, figures)) };
}
