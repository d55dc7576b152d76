import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';

/** Writes one file, with its folders. */
export function writeFile(file: string, text: string | Uint8Array): void {
  mkdirSync(dirname(file), { recursive: true });
  writeFileSync(file, text);
}
