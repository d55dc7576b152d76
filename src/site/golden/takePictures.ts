import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { buildSite } from '../buildSite.ts';
import { openBrowser } from '../openBrowser.ts';
import { placesUnder } from '../places.ts';
import { goldenSheets } from './goldenSheets.ts';
import { takePicture } from './takePicture.ts';

/** Builds the demo jobs aside and takes all pictures anew: name → PNG. */
export async function takePictures(
  home: string,
  browserPath: string,
): Promise<ReadonlyMap<string, Uint8Array>> {
  const root = mkdtempSync(join(tmpdir(), 'packet-golden-'));
  const places = { ...placesUnder(home), output: join(root, 'output'), cache: join(root, 'cache') };
  const browser = await openBrowser(browserPath);
  try {
    const { problems } = await buildSite(places, { names: [], progress: () => undefined });
    if (problems.length > 0) throw new Error(problems.join('\n'));
    const pictures = new Map<string, Uint8Array>();
    for (const [name, path] of Object.entries(goldenSheets)) {
      pictures.set(name, await takePicture(browser, join(places.output, path)));
    }
    return pictures;
  } finally {
    await browser.close();
    rmSync(root, { recursive: true, force: true });
  }
}
