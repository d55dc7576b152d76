import { join } from 'node:path';
import { goldenFolder } from '../golden/goldenSheets.ts';
import { takePictures } from '../golden/takePictures.ts';
import { writeFile } from '../writeFile.ts';
import type { CommandInput } from './CommandInput.ts';

/** Takes the golden pictures anew, over those that are there. */
export async function run({ home, browser }: CommandInput): Promise<number> {
  if (!browser) {
    process.stderr.write('No browser was found. Set PACKET_BROWSER to the path of a Chromium or Chrome.\n');
    return 1;
  }
  for (const [name, png] of await takePictures(home, browser)) {
    const file = join(goldenFolder, `${name}.png`);
    writeFile(join(home, file), png);
    process.stdout.write(`${file} ${Math.round(png.length / 1000)} kB\n`);
  }
  return 0;
}
