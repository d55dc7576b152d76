import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fontFiles } from './assetFiles.mjs';

/** Styles and script that a page carries inside, so that it can be sent alone. */
export interface Inlined {
  readonly styles: string;
  readonly script: string;
}

/** The styles of fonts with every file they name written into them. */
function fontStyles(home: string): string {
  const files = Object.entries(fontFiles).map(([file, path]) => [path.replace('assets/', ''), file] as const);
  return files.reduce(
    (css, [path, file]) => {
      const data = readFileSync(join(home, file)).toString('base64');
      return css.replace(`url("${path}")`, `url("data:font/woff2;base64,${data}")`);
    },
    readFileSync(join(home, 'layouts/styles/fonts.css'), 'utf8'),
  );
}

/** What the page beside the saw carries inside. */
export function inlinedSaw(home: string): Inlined {
  const read = (name: string) => readFileSync(join(home, 'layouts/saw', name), 'utf8');
  return { styles: fontStyles(home) + read('saw.css'), script: read('saw.js') };
}
