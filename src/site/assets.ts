import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fontFiles, styleFolder } from './assetFiles.mjs';

/** Styles and fonts of the site: path under the output → content. */
export function readAssets(home: string): ReadonlyMap<string, Uint8Array> {
  const names = readdirSync(join(home, styleFolder)).filter((name) => name.endsWith('.css'));
  const styles = names.sort().map((name) => [join(styleFolder, name), `assets/${name}`] as const);
  const files = [...styles, ...Object.entries(fontFiles)];
  return new Map(files.map(([file, path]) => [path, readFileSync(join(home, file))]));
}

/** One fingerprint for all of them: a printed page depends on each. */
export function hashAssets(assets: ReadonlyMap<string, Uint8Array>): string {
  const hash = createHash('sha256');
  for (const [path, content] of assets) hash.update(path).update(content);
  return hash.digest('hex');
}
