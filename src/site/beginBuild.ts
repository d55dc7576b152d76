import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { hashAssets, readAssets } from './assets.ts';
import type { BuildWish } from './BuildWish.ts';
import type { Built } from './buildSite.ts';
import type { Places } from './places.ts';
import { startPrinter } from './printer.ts';
import { readFolders } from './readFolders.ts';

/** A job that was never printed will be now. */
function willPrint(places: Places, names: readonly string[]): boolean {
  return readFolders(places.jobs).some(
    ({ slug }) =>
      (names.length === 0 || names.includes(slug)) && !existsSync(join(places.output, slug, 'packet.pdf')),
  );
}

/** A build from a program that has only just started: the browser comes up while the rest of the program is loaded. */
export async function beginBuild(places: Places, wish: BuildWish): Promise<Built> {
  const { browser, progress } = wish;
  const styles = hashAssets(readAssets(places.home));
  const printer = browser ? startPrinter({ browser, store: places.pdfs, styles, progress }) : undefined;
  if (willPrint(places, wish.names)) printer?.warm();
  const { buildSite } = await import('./buildSite.ts');
  return buildSite(places, { ...wish, printer });
}
