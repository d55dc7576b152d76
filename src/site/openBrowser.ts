import puppeteer, { type Browser } from 'puppeteer';

/** Flags that keep the browser to its work: no network, no updates, no first-run pages. */
const quiet = [
  '--disable-gpu',
  '--host-resolver-rules=MAP * ~NOTFOUND',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--no-first-run',
];

/** Starts a browser, with further flags where its work allows them. As root Chromium starts only without its sandbox. */
export function openBrowser(path: string, more: readonly string[] = []): Promise<Browser> {
  const root = process.getuid?.() === 0;
  const shell = /headless-shell/.test(path);
  return puppeteer.launch({
    executablePath: path,
    headless: shell ? 'shell' : true,
    defaultViewport: null,
    args: [...quiet, ...more, ...(root ? ['--no-sandbox'] : [])],
  });
}
