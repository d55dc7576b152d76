/** Places for cards on a page, side by side and one under the other. */
const [COLUMNS, ROWS] = [2, 3] as const;

/** How a card is larger than one place. */
interface Spanning {
  readonly spans: readonly unknown[];
  readonly number?: number;
  /** Numbers of the cards that must not stand on a later page. */
  readonly from?: readonly number[];
}

interface Page<T> {
  readonly cards: readonly T[];
  /** Places that are taken, as `row column`. */
  readonly taken: ReadonlySet<string>;
}

/**
 * Cards page by page, each in the first free place of the first page that has room for it and is no earlier than that of a card it comes after: the page is filled as the style sheet fills its grid, so
 * that every page can begin with the rule over the cards.
 *
 * @example cardPages([{ spans: ['tall'] }, { spans: ['wide', 'tall'] }]).length //=> 2
 */
export function cardPages<T extends Spanning>(cards: readonly T[]): readonly (readonly T[])[] {
  const pages: Page<T>[] = [];
  for (const card of cards) {
    const own = [...pages, { cards: [], taken: new Set<string>() }];
    const first = pages.findLastIndex(({ cards: before }) =>
      before.some(({ number }) => number !== undefined && card.from?.includes(number)),
    );
    const at = own.findIndex(({ taken }, i) => i >= first && placeFor(card, taken));
    const { cards: before, taken } = own[at]!;
    pages[at] = { cards: [...before, card], taken: new Set([...taken, ...placeFor(card, taken)!]) };
  }
  return pages.map((page) => page.cards);
}

/** The places that a card takes on a page of which some are taken; undefined where it has no room. */
function placeFor({ spans }: Spanning, taken: ReadonlySet<string>): readonly string[] | undefined {
  const [wide, tall] = [spans.includes('wide') ? 2 : 1, spans.includes('tall') ? 2 : 1];
  const starts = range(ROWS - tall + 1).flatMap((row) =>
    range(COLUMNS - wide + 1).map((column) => [row, column] as const),
  );
  const places = starts.map(([row, column]) =>
    range(tall).flatMap((down) => range(wide).map((over) => `${row + down} ${column + over}`)),
  );
  return places.find((own) => own.every((place) => !taken.has(place)));
}

const range = (count: number) => Array.from({ length: count }, (_, i) => i);
