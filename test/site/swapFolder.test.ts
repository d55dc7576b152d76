import { existsSync, mkdirSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { swapFolder } from '../../src/site/swapFolder.ts';

function folders(fresh: string | undefined) {
  const root = mkdtempSync(join(tmpdir(), 'packet-swap-'));
  const paths = { fresh: join(root, 'fresh'), place: join(root, 'out', 'place'), aside: join(root, 'aside') };
  mkdirSync(paths.place, { recursive: true });
  writeFileSync(join(paths.place, 'page'), 'old');
  if (fresh !== undefined) {
    mkdirSync(paths.fresh);
    writeFileSync(join(paths.fresh, 'page'), fresh);
  }
  return { ...paths, page: () => readFileSync(join(paths.place, 'page'), 'utf8') };
}

describe('a finished folder', () => {
  test('takes the place of the old one, of which nothing is left', () => {
    const { fresh, place, aside, page } = folders('new');
    swapFolder(fresh, place, aside);
    expect(page()).toBe('new');
    expect([existsSync(fresh), existsSync(aside)]).toEqual([false, false]);
  });

  test('that cannot be moved leaves the old one where it was', () => {
    const { fresh, place, aside, page } = folders(undefined);
    expect(() => swapFolder(fresh, place, aside)).toThrow();
    expect(page()).toBe('old');
  });
});
