import { readFileSync } from 'node:fs';
import { getDocument } from '../support/pdfLibrary.ts';

export interface PdfPage {
  readonly text: string;
  /** In points, 72 an inch. */
  /** Heights of its letters in points, largest first, each once. */
  readonly sizes: readonly number[];
  readonly width: number;
  readonly height: number;
}

/** Opens a PDF with a general-purpose reader. */
export async function readPdf(file: string) {
  const pdf = await getDocument({ data: new Uint8Array(readFileSync(file)), verbosity: 0 }).promise;
  const pages: PdfPage[] = [];
  for (let n = 1; n <= pdf.numPages; n++) {
    const page = await pdf.getPage(n);
    const { items } = await page.getTextContent();
    const text = items.map((item) => ('str' in item ? item.str : '')).join(' ');
    const heights = items.map((item) => ('height' in item ? Math.round(item.height * 10) / 10 : 0));
    const sizes = [...new Set(heights)].filter((height) => height > 0).sort((a, b) => b - a);
    const [, , width = 0, height = 0] = page.view;
    pages.push({ text: text.replace(/\s+/g, ' '), sizes, width, height });
  }
  const { info } = (await pdf.getMetadata()) as unknown as { info: Record<string, unknown> };
  const outline = ((await pdf.getOutline()) ?? []) as readonly { title: string }[];
  return { pages, info, outline: outline.map((entry) => entry.title) };
}
