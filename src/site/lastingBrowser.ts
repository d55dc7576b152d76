import type { Browser, Page } from 'puppeteer';
import { browserMark } from './browserMark.ts';
import { openBrowser } from './openBrowser.ts';

/** Who prints only needs no picture of a page on a screen: none is drawn ahead by threads of its own. */
const printing = ['--num-raster-threads=1', '--disable-threaded-compositing'];

/** A page that prints one document after another. */
export interface LastingPage {
  /** Hands over the page, a new one where the last was dropped or its browser has crashed. */
  readonly get: () => Promise<Page>;
  /** After a failure the page is not used again. */
  readonly drop: () => Promise<void>;
}

export interface LastingBrowser {
  /** Tells it from another browser: what it prints is kept under this mark. */
  readonly mark: string;
  /** Starts it before it is needed, so that it is up by then. */
  readonly warm: () => void;
  readonly page: () => LastingPage;
  readonly close: () => Promise<void>;
}

/** A browser that is started when it is first needed, and again when it has crashed. */
export function lastingBrowser(path: string): LastingBrowser {
  let opening: Promise<Browser> | undefined;
  const open = async (): Promise<Browser> => {
    opening ??= openBrowser(path, printing);
    const current = opening;
    const browser = await current.catch(() => undefined);
    if (browser?.connected) return browser;
    if (opening === current) opening = openBrowser(path, printing);
    return opening;
  };
  const page = (): LastingPage => {
    let kept: Page | undefined;
    const get = async () => {
      if (!kept?.browser().connected) kept = await (await open()).newPage();
      return kept;
    };
    const drop = async () => {
      const old = kept;
      kept = undefined;
      await old?.close().catch(() => undefined);
    };
    return { get, drop };
  };
  const warm = () => void open().catch(() => undefined);
  return {
    mark: browserMark(path),
    warm,
    page,
    close: async () => (await opening?.catch(() => undefined))?.close(),
  };
}
