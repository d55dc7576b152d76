import type * as z from 'zod';
import { dropBlanks } from './dropBlanks.ts';
import { issueTroubles } from './issueTroubles.ts';
import type { JsonSchema } from './schemasAt.ts';
import { settle } from './settle.ts';
import type { Path, Trouble } from './Trouble.ts';
import { without } from './valueAt.ts';

/** Rounds of leaving out what is wrong; each round can only bring to light what the one before hid. */
const ROUNDS = 12;

const nameOf = (path: Path) => JSON.stringify(path);

/** Deeper and later paths first, so that leaving one out moves no other. */
function removalOrder(a: Path, b: Path): number {
  const length = Math.min(a.length, b.length);
  for (let i = 0; i < length; i++) {
    if (a[i] !== b[i])
      return typeof a[i] === 'number' && typeof b[i] === 'number' ? Number(b[i]) - Number(a[i]) : 0;
  }
  return b.length - a.length;
}

/**
 * Checks a file against the schema and reports everything at once: what is wrong is noted and left out, then the rest is
 * checked again. `value` is there when the rest can be read.
 */
export function readShape<T>(
  file: unknown,
  schema: z.ZodType<T>,
  json: JsonSchema,
): { readonly value?: T; readonly troubles: readonly Trouble[] } {
  let rest = dropBlanks(file, json);
  const troubles: Trouble[] = [];
  const seen = new Set<string>();
  for (let round = 0; round < ROUNDS; round++) {
    const parsed = schema.safeParse(rest);
    if (parsed.success) {
      const settled = settle(parsed.data);
      return { value: settled.value, troubles: [...troubles, ...settled.troubles] };
    }
    const found = parsed.error.issues.flatMap((issue) => issueTroubles(issue, rest, json));
    const fresh = found.filter(({ path }) => !seen.has(nameOf(path)));
    if (fresh.length === 0) return { troubles };
    for (const trouble of fresh) seen.add(nameOf(trouble.path));
    troubles.push(...fresh);
    for (const { path } of [...fresh].sort((a, b) => removalOrder(a.path, b.path)))
      rest = without(rest, path);
  }
  return { troubles };
}
