import type { Box, PrintedFile, PrintedPage } from './PrintedPage.ts';

const mm = 72 / 25.4;
/** Shorter paths are arms of crosses, letters and keys, in mm. */
const least = 12;

/** The sheets of one cut, each with where it lies when all are taped together. */
export interface Taped {
  readonly cut: number;
  readonly sheets: readonly { readonly page: PrintedPage; readonly by: readonly [number, number] }[];
}

/** The crosses of a page: the letter beside each, and where it stands. */
function crosses({ words }: PrintedPage): ReadonlyMap<string, readonly [number, number]> {
  const found = words.filter(({ text, font }) => /^[A-W]{1,2}$/.test(text) && font.includes('Bold'));
  return new Map(found.map(({ text, box }) => [text, [box.left / mm, box.bottom / mm]]));
}

/** The number of the cut: the largest type on its page. */
function cutOf({ words }: PrintedPage): number {
  const numbers = words.filter(({ text }) => /^\d+$/.test(text));
  return Number(numbers.reduce((a, b) => (b.size > a.size ? b : a)).text);
}

/** Lays sheet after sheet so that equal letters lie on each other, as a setter tapes them. */
function tape(pages: readonly PrintedPage[]): Taped['sheets'] {
  const laid: { page: PrintedPage; by: readonly [number, number] }[] = [{ page: pages[0]!, by: [0, 0] }];
  let left = pages.slice(1);
  while (left.length > 0) {
    const next = left.flatMap((page) =>
      laid.flatMap((one) => {
        const there = crosses(one.page);
        const [letter, at] = [...crosses(page)].find(([name]) => there.has(name)) ?? [];
        if (letter === undefined || at === undefined) return [];
        const [x, y] = there.get(letter)!;
        return [{ page, by: [one.by[0] + x - at[0], one.by[1] + y - at[1]] as const }];
      }),
    )[0];
    if (!next) throw new Error(`a sheet of cut ${cutOf(pages[0]!)} shares no letter with the others`);
    laid.push(next);
    left = left.filter((page) => page !== next.page);
  }
  return laid;
}

/** All cuts of a file of templates, their sheets taped together. */
export function tapedTemplates({ pages }: PrintedFile): readonly Taped[] {
  const cuts = [...new Set(pages.map(cutOf))];
  return cuts.map((cut) => ({ cut, sheets: tape(pages.filter((page) => cutOf(page) === cut)) }));
}

function moved({ left, bottom, right, top }: Box, [x, y]: readonly [number, number]): Box {
  return { left: left / mm + x, bottom: bottom / mm + y, right: right / mm + x, top: top / mm + y };
}

/** Sizes in mm that one path a sheet reach together, over all choices of paths. */
export function tapedSizes({ sheets }: Taped): readonly (readonly [number, number])[] {
  const join = (a: Box, b: Box): Box => ({
    left: Math.min(a.left, b.left),
    bottom: Math.min(a.bottom, b.bottom),
    right: Math.max(a.right, b.right),
    top: Math.max(a.top, b.top),
  });
  const boxes = sheets.map(({ page, by }) =>
    page.paths
      .map((path) => moved(path, by))
      .filter(({ left, right, bottom, top }) => Math.max(right - left, top - bottom) > least),
  );
  const all = boxes.reduce(
    (some, next) => (some.length === 0 ? [...next] : some.flatMap((a) => next.map((b) => join(a, b)))),
    [] as Box[],
  );
  return all.map(({ left, bottom, right, top }) => [right - left, top - bottom]);
}
