import { pathToFileURL } from 'node:url';
import type { Browser } from 'puppeteer';
import { fixPdfDates } from './fixPdfDates.ts';
import { fixPdfNodes } from './pdfNodes.ts';

/** Prints one HTML file. Each document has its own page object: only then are its bytes always the same. */
export async function printPdf(browser: Browser, html: string): Promise<Uint8Array> {
  const page = await browser.newPage();
  try {
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
  } finally {
    await page.close().catch(() => undefined);
  }
}
