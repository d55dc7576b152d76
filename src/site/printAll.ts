import { createHash } from 'node:crypto';
import { existsSync, readFileSync, renameSync, statSync, utimesSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { type LastingPage, lastingBrowser } from './lastingBrowser.ts';
import { browserMark } from './openBrowser.ts';
import { printPdf } from './printPdf.ts';
import { writeFile } from './writePages.ts';

/** One document to print: HTML file in, PDF file out. */
export interface PrintOrder {
  readonly html: string;
  readonly pdf: string;
}

export interface PrintSettings {
  readonly browser: string;
  /** Folder of PDFs that were printed before, by what they were printed from. */
  readonly store: string;
  /** Fingerprint of the styles and fonts. */
  readonly styles: string;
  readonly progress: (text: string) => void;
}

/** Two at a time is best on two processors. */
const atOnce = 2;

/** `boot-room/crew.pdf`: the folder aside means nothing to a reader. */
function shortName(file: string): string {
  return join(basename(dirname(file)), basename(file));
}

async function printTwice(page: LastingPage, html: string): Promise<Uint8Array> {
  try {
    return await printPdf(await page.get(), html);
  } catch {
    await page.drop();
    return printPdf(await page.get(), html);
  }
}

/** Moved into place when it is whole, so that another build never takes a half of it. */
function keepWhole(file: string, pdf: Uint8Array): void {
  const aside = `${file}.${process.pid}`;
  writeFile(aside, pdf);
  renameSync(aside, file);
}

async function printOne(order: PrintOrder, page: LastingPage, settings: PrintSettings): Promise<void> {
  const marks = [browserMark(settings.browser), settings.styles];
  const key = createHash('sha256').update(marks.join('\n')).update(readFileSync(order.html)).digest('hex');
  const stored = join(settings.store, `${key}.pdf`);
  if (!existsSync(stored)) {
    settings.progress(`Printing ${shortName(order.pdf)}`);
    keepWhole(stored, await printTwice(page, order.html));
  }
  const now = new Date();
  utimesSync(stored, now, now);
  writeFile(order.pdf, readFileSync(stored));
}

/** The longest documents first, so that no page is left printing one of them alone. */
function longestFirst(orders: readonly PrintOrder[]): PrintOrder[] {
  const size = new Map(orders.map((order) => [order, statSync(order.html).size]));
  return [...orders].sort((one, other) => (size.get(other) ?? 0) - (size.get(one) ?? 0));
}

/** Prints all orders that have changed, the rest comes from the store. Gives one line for each that failed. */
export async function printAll(
  orders: readonly PrintOrder[],
  settings: PrintSettings,
): Promise<readonly string[]> {
  const browser = lastingBrowser(settings.browser);
  const waiting = longestFirst(orders);
  const failures: string[] = [];
  const work = async () => {
    const page = browser.page();
    for (let order = waiting.shift(); order; order = waiting.shift()) {
      await printOne(order, page, settings).catch(async (error: Error) => {
        await page.drop();
        failures.push(`${shortName(order?.pdf ?? '')} could not be printed: ${error.message}`);
      });
    }
  };
  await Promise.all(Array.from({ length: atOnce }, work));
  await browser.close();
  return failures;
}
