import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

const fonts = 'node_modules/@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next';

/** Styles and fonts of the site: path under the output → content. */
export function readAssets(home: string): ReadonlyMap<string, Uint8Array> {
  const styles = readdirSync(join(home, 'layouts', 'styles')).filter((name) => name.endsWith('.css'));
  const files = styles
    .sort()
    .map((name) => [`assets/${name}`, join(home, 'layouts', 'styles', name)] as const);
  const weights = ['400', '700'].map(
    (weight) =>
      [`assets/fonts/latin-${weight}.woff2`, join(home, `${fonts}-latin-${weight}-normal.woff2`)] as const,
  );
  return new Map([...files, ...weights].map(([path, file]) => [path, readFileSync(file)]));
}

/** One fingerprint for all of them: a printed page depends on each. */
export function hashAssets(assets: ReadonlyMap<string, Uint8Array>): string {
  const hash = createHash('sha256');
  for (const [path, content] of assets) hash.update(path).update(content);
  return hash.digest('hex');
}
