import { execFile } from 'node:child_process';
import { pathToFileURL } from 'node:url';
import { promisify } from 'node:util';

const start = promisify(execFile);

/** Prints HTML files with the browser's own command, two at a time, each by a browser of its own: nothing of ours runs. */
export async function printBarely(browser: string, pages: readonly string[]): Promise<void> {
  const sandbox = process.getuid?.() === 0 ? ['--no-sandbox'] : [];
  const flags = ['--headless', '--disable-gpu', '--no-pdf-header-footer', ...sandbox];
  const waiting = [...pages];
  const work = async () => {
    for (let page = waiting.shift(); page; page = waiting.shift()) {
      await start(browser, [...flags, `--print-to-pdf=${page}.pdf`, pathToFileURL(page).href]);
    }
  };
  await Promise.all([work(), work()]);
}
