import { readFileSync } from 'node:fs';
import type { PDFPageProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { getDocument } from '../../support/pdfLibrary.ts';
import type { Box, PrintedFile, PrintedPage, Words } from './PrintedPage.ts';
import { pathBoxes } from './pathBoxes.ts';

interface TextItem {
  readonly str: string;
  readonly transform: readonly number[];
  readonly width: number;
  readonly fontName: string;
  readonly hasEOL: boolean;
}

/** Height of a capital of the bundled font as a share of its size. */
const capital = 0.668;

/** Runs that lie level or upright; the transform holds type size, direction and base line. */
function boxOf({ transform, width }: TextItem): Box {
  const [a = 0, b = 0, , , x = 0, y = 0] = transform;
  const size = Math.hypot(a, b);
  const [along, up] = [
    [(a / size) * width, (b / size) * width],
    [(-b / size) * size * capital, (a / size) * size * capital],
  ] as const;
  const xs = [x, x + along[0]!, x + up[0]!, x + along[0]! + up[0]!];
  const ys = [y, y + along[1]!, y + up[1]!, y + along[1]! + up[1]!];
  return { left: Math.min(...xs), right: Math.max(...xs), bottom: Math.min(...ys), top: Math.max(...ys) };
}

async function readPage(page: PDFPageProxy, withPaths: boolean): Promise<PrintedPage> {
  const operators = await page.getOperatorList();
  const { items } = await page.getTextContent();
  const runs = items.filter((item): item is (typeof items)[number] & TextItem => 'str' in item);
  const fontOf = (name: string): string => {
    const found = page.commonObjs.has(name) ? (page.commonObjs.get(name) as { name?: string }) : undefined;
    return (found?.name ?? name).replace(/^[A-Z]{6}\+/, '');
  };
  const words = runs
    .filter(({ str }) => str.trim() !== '')
    .map((run): Words => {
      const [a = 0, b = 0] = run.transform;
      return { text: run.str, font: fontOf(run.fontName), size: Math.hypot(a, b), box: boxOf(run) };
    });
  const [, , width = 0, height = 0] = page.view;
  const turned = ({ transform: [along = 0, up = 0] }: TextItem) => Math.abs(up) > Math.abs(along);
  // Where the writing turns, the reader tells no end of line: an upright figure would run on from a level one.
  const ends = (run: TextItem, next: TextItem | undefined) =>
    run.hasEOL || (next !== undefined && next.str !== '' && turned(run) !== turned(next));
  const text = runs.map((run, at) => run.str + (ends(run, runs[at + 1]) ? '\n' : '')).join('');
  const paths = withPaths ? pathBoxes(operators) : [];
  return { number: page.pageNumber, width, height, words, text, paths };
}

/** Reads a printed file back with a general-purpose reader of PDFs. */
export async function readPrinted(file: string): Promise<PrintedFile> {
  const bytes = readFileSync(file);
  const pdf = await getDocument({ data: new Uint8Array(bytes), verbosity: 0, fontExtraProperties: false })
    .promise;
  const pages: PrintedPage[] = [];
  for (let number = 1; number <= pdf.numPages; number++) {
    pages.push(await readPage(await pdf.getPage(number), true));
  }
  const { info } = (await pdf.getMetadata()) as unknown as { info: Record<string, unknown> };
  const outline = ((await pdf.getOutline()) ?? []) as readonly { title: string }[];
  const marked = (await pdf.getMarkInfo()) as { Marked?: boolean } | null;
  await pdf.destroy();
  const names = bytes.toString('latin1').match(/\/BaseFont \/[^\s/]+/g) ?? [];
  return {
    pages,
    info,
    outline: outline.map(({ title }) => title),
    tagged: marked?.Marked === true,
    fonts: [...new Set(names.map((name) => name.replace(/^\/BaseFont \/([A-Z]{6}\+)?/, '')))],
  };
}
