import { createHash } from 'node:crypto';
import { existsSync, readFileSync, utimesSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import type { Browser } from 'puppeteer';
import { browserMark, openBrowser } from './openBrowser.ts';
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

/** A browser that is started when it is first needed, and again when it has crashed. */
function lastingBrowser(path: string) {
  let opening: Promise<Browser> | undefined;
  const open = async (): Promise<Browser> => {
    opening ??= openBrowser(path);
    const current = opening;
    const browser = await current.catch(() => undefined);
    if (browser?.connected) return browser;
    if (opening === current) opening = openBrowser(path);
    return opening;
  };
  return { open, close: async () => (await opening?.catch(() => undefined))?.close() };
}

/** `boot-room/crew.pdf`: the folder aside means nothing to a reader. */
function shortName(file: string): string {
  return join(basename(dirname(file)), basename(file));
}

type LastingBrowser = ReturnType<typeof lastingBrowser>;

async function printTwice(browser: LastingBrowser, html: string): Promise<Uint8Array> {
  try {
    return await printPdf(await browser.open(), html);
  } catch {
    return printPdf(await browser.open(), html);
  }
}

async function printOne(order: PrintOrder, browser: LastingBrowser, settings: PrintSettings): Promise<void> {
  const marks = [browserMark(settings.browser), settings.styles];
  const key = createHash('sha256').update(marks.join('\n')).update(readFileSync(order.html)).digest('hex');
  const stored = join(settings.store, `${key}.pdf`);
  if (!existsSync(stored)) {
    settings.progress(`Printing ${shortName(order.pdf)}`);
    writeFile(stored, await printTwice(browser, order.html));
  }
  const now = new Date();
  utimesSync(stored, now, now);
  writeFile(order.pdf, readFileSync(stored));
}

/** Prints all orders that have changed, the rest comes from the store. Gives one line for each that failed. */
export async function printAll(
  orders: readonly PrintOrder[],
  settings: PrintSettings,
): Promise<readonly string[]> {
  const browser = lastingBrowser(settings.browser);
  const waiting = [...orders];
  const failures: string[] = [];
  const work = async () => {
    for (let order = waiting.shift(); order; order = waiting.shift()) {
      await printOne(order, browser, settings).catch((error: Error) => {
        failures.push(`${shortName(order?.pdf ?? '')} could not be printed: ${error.message}`);
      });
    }
  };
  await Promise.all(Array.from({ length: atOnce }, work));
  await browser.close();
  return failures;
}
