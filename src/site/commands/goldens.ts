import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { buildSite } from '../buildSite.ts';
import { goldenFolder } from '../golden/goldenSheets.ts';
import { takePictures } from '../golden/takePictures.ts';
import { placesUnder } from '../places.ts';
import { writeFile } from '../writeFile.ts';
import type { CommandInput } from './CommandInput.ts';

/** Takes the golden pictures anew, over those that are there. */
export async function run({ home, browser }: CommandInput): Promise<number> {
  if (!browser) {
    process.stderr.write('No browser was found. Set PACKET_BROWSER to the path of a Chromium or Chrome.\n');
    return 1;
  }
  const root = mkdtempSync(join(tmpdir(), 'packet-golden-'));
  const places = { ...placesUnder(home), output: join(root, 'output'), cache: join(root, 'cache') };
  const { problems } = await buildSite(places, { names: [], progress: () => undefined });
  if (problems.length > 0) throw new Error(problems.join('\n'));
  const pictures = await takePictures(places.output, browser);
  rmSync(root, { recursive: true, force: true });
  for (const [name, png] of pictures) {
    const file = join(goldenFolder, `${name}.png`);
    writeFile(join(home, file), png);
    process.stdout.write(`${file} ${Math.round(png.length / 1000)} kB\n`);
  }
  return 0;
}
