import { expect, test } from 'vitest';
import { demos, words } from './demos.ts';

interface Called {
  readonly number: number;
  readonly hand: string;
  readonly asPlan: string;
}

/** What the hard cuts of a demo are called on a sheet, by number. */
function calledOn(demo: (typeof demos)[number], template: string, key: 'cards' | 'pages') {
  const all = demo.sheets
    .filter((sheet) => sheet.template === template)
    .flatMap(({ data }) => (data as Record<typeof key, readonly Called[]>)[key]);
  return new Map(all.map(({ number, hand, asPlan }) => [number, `${hand} ${asPlan}`]));
}

test.each(demos)('$slug: card and template of a cut call it by one hand', (demo) => {
  const [cards, pages] = [calledOn(demo, 'hard-cuts', 'cards'), calledOn(demo, 'templates', 'pages')];
  expect(pages.size).toBeGreaterThan(0);
  for (const [number, called] of pages) expect(called, `cut ${number}`).toBe(cards.get(number));
});

/** Corners of the polygons of a path, in mm from the top left. */
function rings(d: string): (readonly [number, number])[][] {
  return d
    .split('M')
    .slice(1)
    .map((one) =>
      [...one.matchAll(/([-\d.]+),([-\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)] as const),
    );
}

/** How far right of the middle of its tile the middle of a piece lies, as a share of the tile's width, by the key of its template. */
function offMiddle(key: string): number {
  const [tile, piece] = [...key.matchAll(/<path d="([^"]*)"(?! fill="#fff")/g)].map(([, d]) => rings(d!));
  const xs = tile![0]!.map(([x]) => x);
  const [left, right] = [Math.min(...xs), Math.max(...xs)];
  // Twice the area, and six times its first moment, of all rings with their signs.
  const sums = piece!.flatMap((ring) =>
    ring.map(([x, y], i) => {
      const [u, v] = ring[(i + 1) % ring.length]!;
      return [x * v - u * y, (x + u) * (x * v - u * y)] as const;
    }),
  );
  const [area, moment] = [0, 1].map((at) => sums.reduce((sum, one) => sum + one[at as 0 | 1], 0));
  return (moment! / (3 * area!) - (left + right) / 2) / (right - left);
}

test.each(demos)('$slug: more is taken away on the side of the template that its hand tells', (demo) => {
  const pages = demo.sheets
    .filter(({ template }) => template === 'templates')
    .flatMap(({ data }) => (data as { pages: (Called & { key: string; turned: boolean })[] }).pages);
  const { lang } = demo.sheets.find(({ template }) => template === 'templates')!;
  const [leftHand, rightHand] = ['left', 'right'].map((hand) => words.say(lang)(`cut.hand.${hand}`));
  for (const { number, hand, key } of pages.filter((one) => !one.turned)) {
    const off = offMiddle(key);
    // What is nearer to the middle than the pen draws has a side that nobody sees.
    if (hand === '' || Math.abs(off) < 0.005) continue;
    expect(off > 0 ? leftHand : rightHand, `cut ${number}`).toBe(hand);
  }
});
