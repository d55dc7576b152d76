import { join } from 'node:path';
import { openBrowser } from '../openBrowser.ts';
import { goldenSheets } from './goldenSheets.ts';
import { takePicture } from './takePicture.ts';

/** Takes all pictures of the demo jobs as they stand in an output folder: name → PNG. */
export async function takePictures(
  output: string,
  browserPath: string,
): Promise<ReadonlyMap<string, Uint8Array>> {
  const browser = await openBrowser(browserPath);
  try {
    const pictures = new Map<string, Uint8Array>();
    for (const [name, path] of Object.entries(goldenSheets)) {
      pictures.set(name, await takePicture(browser, join(output, path)));
    }
    return pictures;
  } finally {
    await browser.close();
  }
}
