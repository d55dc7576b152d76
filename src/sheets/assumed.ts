import type { Sheet } from './Sheet.ts';
import type { SheetContext } from './SheetContext.ts';

/** What did nobody say? Every setting that was assumed, the reason of each limit, and the cautions in full, in both languages of the crew. */
export const assumed: Sheet = {
  name: 'assumed',
  for: 'all',
  bundles: ['office', 'packet'],
  speaks: 'crew',
  make: (context) => [
    {
      data: {
        defaults: context.packet.defaults.map(({ path, figures }) => ({
          path,
          value: String(figures.value ?? ''),
        })),
        limits: reasons(context),
        cautions: context.packet.care.cautions.map(({ code }) => ({
          first: context.say(code),
          second: context.second?.say(code) ?? '',
        })),
      },
    },
  ],
};

/** Each rule once, with its reason and the kind of its source. */
function reasons({ packet, say }: SheetContext) {
  const once = new Map(packet.limits.map((limit) => [limit.rule, limit]));
  return [...once.values()].map(({ rule, mark }) => ({
    name: say(`limit.${rule}`),
    why: say(`limit.${rule}.why`),
    mark: say(`mark.${mark}`),
  }));
}
