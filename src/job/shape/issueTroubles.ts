import type * as z from 'zod';
import { likelyFigures } from './likely.ts';
import { type JsonSchema, keysAt } from './schemasAt.ts';
import type { Path, Trouble } from './Trouble.ts';
import { valueAt } from './valueAt.ts';

type Issue = z.core.$ZodIssue;

const WANTED: Readonly<Record<string, string>> = {
  object: 'map',
  record: 'map',
  array: 'list',
  null: 'alone',
};

function pathOf(issue: Issue): Path {
  return issue.path.map((key) => (typeof key === 'number' ? key : String(key)));
}

/** Of the forms a value may have, the one it was meant to be: that which does not already fail at its top. */
function meantForm(issue: Extract<Issue, { code: 'invalid_union' }>): readonly Issue[] {
  const form = issue.errors.find(
    (issues) => issues.every(({ path }) => path.length > 0) || unknownOnly(issues),
  );
  return (form ?? []).map((inner) => ({ ...inner, path: [...issue.path, ...inner.path] }) as Issue);
}

function unknownOnly(issues: readonly Issue[]): boolean {
  return issues.every(
    ({ code, path }) => path.length > 0 || code === 'unrecognized_keys' || code === 'too_small',
  );
}

function unknownKeys(keys: readonly string[], path: Path, schema: JsonSchema): readonly Trouble[] {
  const allowed = keysAt(schema, path);
  return keys.map((key) => ({
    code: 'unknownKey',
    path: [...path, key],
    figures: { key, ...likelyFigures(key, allowed), allowed: allowed.join(', ') },
    atKey: true,
  }));
}

/** What the schema has against a file, in our own codes. */
export function issueTroubles(issue: Issue, file: unknown, schema: JsonSchema): readonly Trouble[] {
  const path = pathOf(issue);
  if (issue.code === 'unrecognized_keys') return unknownKeys(issue.keys, path, schema);
  if (issue.code === 'invalid_union') {
    const forms = meantForm(issue);
    if (forms.length > 0) return forms.flatMap((inner) => issueTroubles(inner, file, schema));
  }
  const value = valueAt(file, path);
  if (value === undefined || value === null) {
    const key = String(path.at(-1) ?? '');
    return [{ code: 'missing', path, figures: { key }, atKey: true }];
  }
  if (issue.code === 'too_small') return [{ code: 'emptyList', path, figures: {} }];
  const wanted =
    issue.code === 'invalid_type'
      ? (WANTED[issue.expected] ?? 'other')
      : issue.code === 'custom'
        ? 'value'
        : 'other';
  return [{ code: 'wrongType', path, figures: { wanted, key: String(path.at(-1) ?? '') } }];
}
