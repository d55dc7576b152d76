import { readFileSync } from 'node:fs';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';

export interface PdfPage {
  readonly text: string;
  /** In points, 72 an inch. */
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
    const [, , width = 0, height = 0] = page.view;
    pages.push({ text: text.replace(/\s+/g, ' '), width, height });
  }
  const { info } = (await pdf.getMetadata()) as unknown as { info: Record<string, unknown> };
  const outline = ((await pdf.getOutline()) ?? []) as readonly { title: string }[];
  return { pages, info, outline: outline.map((entry) => entry.title) };
}
