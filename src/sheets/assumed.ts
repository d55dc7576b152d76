import type { Sheet } from './Sheet.ts';

/** What did nobody say? Every setting that was assumed, and the cautions in full, in both languages of the crew. */
export const assumed: Sheet = {
  name: 'assumed',
  for: 'all',
  bundles: ['office', 'packet'],
  speaks: 'crew',
  make: ({ packet, say, second }) => [
    {
      data: {
        defaults: packet.defaults.map(({ path, figures }) => ({ path, value: String(figures.value ?? '') })),
        cautions: packet.care.cautions.map(({ code }) => ({
          first: say(code),
          second: second?.say(code) ?? '',
        })),
      },
    },
  ],
};
