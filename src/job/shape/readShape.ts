import type * as z from 'zod';
import { dropBlanks } from './dropBlanks.ts';
import { issueTroubles } from './issueTroubles.ts';
import { TOLD } from './leaf.ts';
import { type JsonSchema, schemasAt } from './schemasAt.ts';
import { settle } from './settle.ts';
import type { Path, Trouble } from './Trouble.ts';
import { without, withValue } from './valueAt.ts';

/** Rounds of mending what is wrong; each round can only bring to light what the one before hid. */
const ROUNDS = 12;

const nameOf = (path: Path) => JSON.stringify(path);

/** Whether a path is another one or leads on from it. */
export function isWithin(path: Path, outer: Path): boolean {
  return outer.every((key, i) => path[i] === key);
}

/** Unknown keys are left out; what is missing or of the wrong kind is replaced, so that the rest can be read. */
function mended(file: unknown, { code, path }: Trouble, json: JsonSchema): unknown {
  if (code === 'unknownKey') return without(file, path);
  const forms = schemasAt(json, path);
  const isMap = forms.length > 0 && forms.every(({ type }) => type === 'object');
  const isList = forms.length > 0 && forms.every(({ type }) => type === 'array');
  if (isList) return without(file, path);
  return withValue(file, path, isMap ? {} : TOLD);
}

/** A key that is missing because it is misspelt is told once, as misspelt. */
function isMisspelt({ code, path }: Trouble, all: readonly Trouble[]): boolean {
  const parent = nameOf(path.slice(0, -1));
  return (
    code === 'missing' &&
    all.some(
      (other) =>
        other.code === 'unknownKey' &&
        nameOf(other.path.slice(0, -1)) === parent &&
        other.figures.likely === path.at(-1),
    )
  );
}

/** Troubles without those that only follow from another one: inside what is wrong as a whole, or told already as misspelt. */
export function withoutEchoes(
  structural: readonly Trouble[],
  others: readonly Trouble[] = [],
): readonly Trouble[] {
  const whole = structural.filter(({ code }) => code !== 'unknownKey');
  const told = structural.filter(
    (one) => !whole.some((outer) => outer.path.length < one.path.length && isWithin(one.path, outer.path)),
  );
  const rest = others.filter((one) => !whole.some((outer) => isWithin(one.path, outer.path)));
  return [...told.filter((one) => !isMisspelt(one, told)), ...rest];
}

/** A file as far as it can be read. `structural` are missing, unknown and misplaced keys, `unread` values that say nothing. */
export interface ShapeReading<T> {
  readonly value?: T;
  readonly structural: readonly Trouble[];
  readonly unread: readonly Trouble[];
}

/** Checks a file against the schema: what is wrong is noted and mended, then the file is checked again. */
export function readShape<T>(file: unknown, schema: z.ZodType<T>, json: JsonSchema): ShapeReading<T> {
  let rest = dropBlanks(file, json);
  const structural: Trouble[] = [];
  const seen = new Set<string>();
  for (let round = 0; round < ROUNDS; round++) {
    const parsed = schema.safeParse(rest);
    if (parsed.success) {
      const { value, troubles } = settle(parsed.data);
      return { value, structural, unread: troubles };
    }
    const found = parsed.error.issues.flatMap((issue) => issueTroubles(issue, rest, json));
    const fresh = found.filter(({ path }) => !seen.has(nameOf(path)));
    if (fresh.length === 0) break;
    for (const trouble of fresh) seen.add(nameOf(trouble.path));
    structural.push(...fresh);
    rest = fresh.reduce((mending, trouble) => mended(mending, trouble, json), rest);
  }
  return { structural, unread: [] };
}
