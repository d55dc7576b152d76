import puppeteer, { type Browser } from 'puppeteer';

/** Flags that keep the browser to its work: no network, no updates, no first-run pages, no pictures of pages drawn ahead on other threads. */
const quiet = [
  '--disable-gpu',
  '--host-resolver-rules=MAP * ~NOTFOUND',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--no-first-run',
  '--num-raster-threads=1',
  '--disable-threaded-compositing',
];

/** Starts a browser that prints. As root Chromium starts only without its sandbox. */
export function openBrowser(path: string): Promise<Browser> {
  const root = process.getuid?.() === 0;
  const shell = /headless-shell/.test(path);
  return puppeteer.launch({
    executablePath: path,
    headless: shell ? 'shell' : true,
    defaultViewport: null,
    args: root ? [...quiet, '--no-sandbox'] : quiet,
  });
}
