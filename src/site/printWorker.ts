/** A thread of its own that prints, so that pages are printed while the next job is still being worked out. */
import { renameSync } from 'node:fs';
import { parentPort, workerData } from 'node:worker_threads';
import { type LastingPage, lastingBrowser } from './lastingBrowser.ts';
import { printPdf } from './printPdf.ts';
import type { PrintAnswer, PrintAsk } from './printThread.ts';
import { writeFile } from './writeFile.ts';

/** Two at a time is best on two processors. */
const atOnce = 2;

const browser = lastingBrowser(workerData as string);
const idle = Array.from({ length: atOnce }, () => browser.page());
const waiting: PrintAsk[] = [];

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

async function answer({ key, html, stored }: PrintAsk, page: LastingPage): Promise<PrintAnswer> {
  try {
    keepWhole(stored, await printTwice(page, html));
    return { key };
  } catch (error) {
    await page.drop();
    return { key, error: (error as Error).message };
  }
}

/** The longest come first, so that no page is left printing one of them alone at the end. */
async function work(): Promise<void> {
  const page = idle.pop();
  if (!page) return;
  for (let next = waiting.shift(); next; next = waiting.shift())
    parentPort?.postMessage(await answer(next, page));
  idle.push(page);
}

parentPort?.on('message', async (ask: PrintAsk | 'warm' | 'close') => {
  if (ask === 'warm') return browser.warm();
  if (ask !== 'close') {
    waiting.push(ask);
    waiting.sort((one, other) => other.size - one.size);
    return work();
  }
  await browser.close();
  parentPort?.close();
});
