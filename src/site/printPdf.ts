import { pathToFileURL } from 'node:url';
import type { Page } from 'puppeteer';
import { fixPdfDates } from './fixPdfDates.ts';
import { fixPdfNodes } from './pdfNodes.ts';

/** Prints one HTML file. The page may have printed others before: the bytes are the same, and to open one is slow. */
export async function printPdf(page: Page, html: string): Promise<Uint8Array> {
  // Laid out for paper from the start, a page need not be styled anew when it is printed.
  await page.emulateMediaType('print');
  await page.goto(pathToFileURL(html).href, { waitUntil: 'load' });
  await page.evaluate('document.fonts.ready.then(() => true)');
  const pdf = await page.pdf({
    preferCSSPageSize: true,
    printBackground: true,
    outline: true,
    tagged: true,
    timeout: 120_000,
  });
  return fixPdfNodes(fixPdfDates(pdf));
}
