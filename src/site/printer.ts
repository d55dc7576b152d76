import { createHash } from 'node:crypto';
import { existsSync, readFileSync, utimesSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { browserMark } from './browserMark.ts';
import { printThread } from './printThread.ts';
import { writeFile } from './writeFile.ts';

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

export interface Printer {
  /** Starts the browser before it is needed, so that it is up by then. */
  readonly warm: () => void;
  /** Prints what has changed, the rest comes from the store. The pages must stay until all is done. */
  readonly add: (orders: readonly PrintOrder[]) => void;
  /** Waits for everything that was added. Gives one line for each that failed. */
  readonly done: () => Promise<readonly string[]>;
  readonly close: () => Promise<void>;
}

/** `boot-room/crew.pdf`: the folder aside means nothing to a reader. */
function shortName(file: string): string {
  return join(basename(dirname(file)), basename(file));
}

type Thread = ReturnType<typeof printThread>;

/** Sees to it that a page's PDF is in the store: each content is printed once, whatever the number of jobs that hold it. */
function storeKeeper({ store, styles, browser, progress }: PrintSettings, thread: Thread) {
  const mark = `${browserMark(browser)}\n${styles}\n`;
  const printing = new Map<string, Promise<void>>();
  return ({ html, pdf }: PrintOrder) => {
    const page = readFileSync(html);
    const key = createHash('sha256').update(mark).update(page).digest('hex');
    const stored = join(store, `${key}.pdf`);
    if (!printing.has(key) && !existsSync(stored)) {
      const printed = thread.print({ key, html, stored, size: page.length });
      printing.set(
        key,
        printed.then(() => progress(`Printed ${shortName(pdf)}`)),
      );
    }
    return { stored, ready: printing.get(key) };
  };
}

/** Prints pages in a thread of its own. */
export function startPrinter(settings: PrintSettings): Printer {
  const thread = printThread(settings.browser);
  const keep = storeKeeper(settings, thread);
  const orders: Promise<string | undefined>[] = [];
  const put = async (order: PrintOrder): Promise<string | undefined> => {
    try {
      const { stored, ready } = keep(order);
      await ready;
      const now = new Date();
      utimesSync(stored, now, now);
      writeFile(order.pdf, readFileSync(stored));
      return undefined;
    } catch (error) {
      return `${shortName(order.pdf)} could not be printed: ${(error as Error).message}`;
    }
  };
  return {
    warm: thread.warm,
    add: (more) => void orders.push(...more.map(put)),
    done: async () => (await Promise.all(orders)).filter((line) => line !== undefined),
    close: thread.close,
  };
}
