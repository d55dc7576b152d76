import { tightFrom } from '../trade/index.ts';
import { bothTongues } from './bothTongues.ts';
import { defaultLine } from './defaultLine.ts';
import type { Sheet } from './Sheet.ts';
import type { SheetContext } from './SheetContext.ts';
import { saySource } from './saySource.ts';

/** What did nobody say? Every setting that was assumed, the reason of each limit, and the cautions in full, in both languages of the crew. */
export const assumed: Sheet = {
  name: 'assumed',
  for: 'all',
  bundles: ['office', 'packet'],
  speaks: 'crew',
  make: (context) => [
    {
      data: {
        defaults: context.packet.defaults.map((one) => defaultLine(context, one)),
        limits: reasons(context),
        standards: context.packet.limits.some(({ mark }) => mark === REPORTED),
        cautions: context.packet.care.cautions.map(({ code }) => bothTongues(context, code)),
      },
    },
  ],
};

/** What most rules rest on: said once for all of them. */
const REPORTED = 'S';

/** Each rule once, with its reason, its source and what kind of source that is. */
function reasons({ packet, say, units, length }: SheetContext) {
  const once = new Map(packet.limits.map((limit) => [limit.rule, limit]));
  return [...once.values()].map(({ rule, mark, source }) => ({
    name: say(`limit.${rule}`),
    why: say(`limit.${rule}.why`, { units: units.system, side: length(tightFrom(units.system)) }),
    mark: [...new Set([saySource(say, source), ...(mark === REPORTED ? [] : [say(`mark.${mark}`)])])].join(
      '; ',
    ),
  }));
}
