import type { Box, PrintedFile, PrintedPage, Words } from './PrintedPage.ts';

const mm = 72 / 25.4;
/** Head and foot of a page, in points: the margins above and below what a sheet prints. */
const [head, foot] = [26 * mm, 16 * mm];
/** Common printers leave at least this much white: common practice, no source. */
const unprintable = 4.2 * mm;
/** The smallest type on paper in points, less what rounding takes. */
const smallest = 8 - 0.06;
/** Letters may come this near to each other in points: kerning, and a raised numerator at its slash. */
const touch = 1.2;

const told = (words: Words): string => {
  const { left, bottom, right, top } = words.box;
  return `"${words.text.slice(0, 60)}" (${[left, bottom, right, top].map((at) => at.toFixed(0)).join(' ')})`;
};

function overlap(a: Box, b: Box): boolean {
  return (
    Math.min(a.right, b.right) - Math.max(a.left, b.left) > touch &&
    Math.min(a.top, b.top) - Math.max(a.bottom, b.bottom) > touch
  );
}

function overlaps(words: readonly Words[]): readonly string[] {
  return words.flatMap((one, at) =>
    words
      .slice(at + 1)
      .filter((other) => overlap(one.box, other.box))
      .map((other) => `${told(one)} lies on ${told(other)}`),
  );
}

function offPaper({ words, width, height }: PrintedPage): readonly string[] {
  return words
    .filter(
      ({ box }) =>
        box.left < unprintable ||
        box.right > width - unprintable ||
        box.bottom < unprintable ||
        box.top > height - unprintable,
    )
    .map((one) => `${told(one)} runs off the paper`);
}

/** Words that are seen: a sheet's heading is there once more, without colour, for the outline and for screen readers. */
function seen({ words }: PrintedPage, { outline }: PrintedFile): readonly Words[] {
  return words.filter(({ text, size }) => size > 8.5 || !outline.includes(text.trim()));
}

/** Whether a page has words between its head and its foot. */
function hasBody(words: readonly Words[], height: number): boolean {
  return words.some(({ box }) => box.bottom > foot && box.top < height - head);
}

/** How far down its page a sheet must reach that runs on: a page for two lines is a page too many. */
const runsOn = 30 * mm;

/** Pages that their sheet runs on to with a few lines only. */
export function shortPages({ pages }: PrintedFile): readonly string[] {
  const question = ({ text }: PrintedPage) => text.split('\n')[0];
  return pages.flatMap((page, at) => {
    const before = pages[at - 1];
    const body = page.words.filter(({ box }) => box.bottom > foot && box.top < page.height - head);
    const lowest = Math.min(...body.map(({ box }) => box.bottom));
    const short = lowest > page.height - head - runsOn;
    return before && short && question(before) === question(page)
      ? [`page ${page.number}: its sheet runs on for a few lines`]
      : [];
  });
}

/** All of a kind of fault in a file, each with its page. */
function onPages(file: PrintedFile, find: (page: PrintedPage) => readonly string[]): readonly string[] {
  return file.pages.flatMap((page) => find(page).map((line) => `page ${page.number}: ${line}`));
}

/** Words that lie on other words, run off the paper or stand alone on a page that is otherwise empty. */
export function placeFaults(file: PrintedFile): readonly string[] {
  return onPages(file, (page) => {
    const words = seen(page, file);
    const empty = hasBody(words, page.height) ? [] : ['nothing but head and foot'];
    return [...overlaps(words), ...offPaper(page), ...empty];
  });
}

/** Type that is too small to read. */
export function sizeFaults(file: PrintedFile): readonly string[] {
  return onPages(file, ({ words }) =>
    words.filter(({ size }) => size < smallest).map((one) => `${told(one)} is ${one.size.toFixed(1)} pt`),
  );
}

/** Words in another font than the bundled one, whose letters it therefore lacks. */
export function fontFaults(file: PrintedFile): readonly string[] {
  const own = (name: string) => name.startsWith('AtkinsonHyperlegibleNext');
  const foreign = file.fonts.filter((font) => !own(font)).map((font) => `the file carries ${font}`);
  const where = onPages(file, ({ words }) =>
    words.filter(({ font }) => !own(font)).map((one) => `${told(one)} in ${one.font}`),
  );
  return [...foreign, ...where];
}

/** Sizes in mm of the check bars of a page: the one path that is as wide as it is high and near their nominal length. */
export function checkBars({ paths }: PrintedPage, nominalMm: number): readonly (readonly [number, number])[] {
  // They stand at the binding side; a tile that is as large on paper stands to the right of them.
  return paths
    .filter(({ left }) => left < 25 * mm)
    .map(({ left, right, bottom, top }) => [(right - left) / mm, (top - bottom) / mm] as const)
    .filter(([wide, high]) => Math.abs(wide - nominalMm) < 1.9 && Math.abs(high - nominalMm) < 1.9);
}
