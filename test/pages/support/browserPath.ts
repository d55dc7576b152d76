import { join } from 'node:path';
import { findBrowser } from '../../../src/site/setup/findBrowser.mjs';

/** The program's own folder. */
export const home = join(import.meta.dirname, '../../..');

/** How long a browser may take for all its pages, in ms, on a machine that has other work too: no judgement of its speed. */
export const patience = 600_000;

/** The browser that the build would print with. Without one these tests fail: they would have tested nothing. */
export function browserPath(): string {
  const found = findBrowser(process.env, join(home, '.cache', 'browser'));
  if (found) return found;
  throw new Error(
    'No Chromium or Chrome was found. Run "npm start" or "npm test", which fetch one, or set PACKET_BROWSER to the path of one.',
  );
}
