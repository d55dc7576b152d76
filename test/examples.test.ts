import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { pathToFileURL } from 'node:url';
import { describe, expect, test } from 'vitest';

const SRC = join(import.meta.dirname, '..', 'src');

interface Example {
  readonly code: string;
  readonly value: string;
}

/** Lines `code //=> value` that follow an `@example` in the docstrings of a file. */
function examplesOf(text: string): Example[] {
  return [...text.matchAll(/\/\*\*[\s\S]*?\*\//g)].flatMap(([doc]) =>
    doc.split('\n').flatMap((line, at, lines) => {
      const found = /^\s*(?:\/\*\*|\*)?\s*(?:@example\s+)?(.+?)\s*\/\/=>\s*(.+?)\s*(?:\*\/)?$/.exec(line);
      const inExample = lines.slice(0, at + 1).some((before) => before.includes('@example'));
      return found && inExample ? [{ code: found[1]!, value: found[2]! }] : [];
    }),
  );
}

async function evaluate(code: string, scope: Record<string, unknown>): Promise<unknown> {
  const names = Object.keys(scope).filter((name) => name !== 'default');
  const run = new Function(...names, `return (${code});`);
  return await run(...names.map((name) => scope[name]));
}

const files = readdirSync(SRC, { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.ts') && !name.endsWith('.d.ts'))
  .map((name) => join(SRC, name))
  .map((file) => ({ file, examples: examplesOf(readFileSync(file, 'utf8')) }))
  .filter(({ examples }) => examples.length > 0);

describe('each example in a docstring gives the value beside it', () => {
  test('there are examples to run', () => expect(files.length).toBeGreaterThan(20));

  describe.each(files.map(({ file, examples }) => [relative(SRC, file), file, examples] as const))(
    '%s',
    (_name, file, examples) => {
      test.each(examples)('$code', async ({ code, value }) => {
        const measure = await import(pathToFileURL(join(SRC, 'measure', 'index.ts')).href);
        const own = await import(pathToFileURL(file).href);
        const found = await evaluate(code, { ...measure, ...own });
        expect(found).toEqual(await evaluate(value, {}));
      });
    },
  );
});
