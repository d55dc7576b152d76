import type { Path } from '../job/shape/Trouble.ts';
import { valueAt, without, withValue } from '../job/shape/valueAt.ts';
import type { AskedKind } from '../sheets/measuring/AskedField.ts';
import type { FieldView } from './FieldView.ts';
import { listKinds, treeOf } from './fieldValues.ts';
import { removeText, renameText, setText, type Written } from './setText.ts';
import { fullForm, shortForm } from './shortForms.ts';

const trimmed = (values: readonly string[]): readonly string[] => values.map((value) => value.trim());

/** An answer as the job file writes it; undefined where nothing is answered. */
function written(values: readonly string[], kind: AskedKind): Written | undefined {
  const parts = trimmed(values);
  const given = parts.filter((part) => part !== '');
  if (given.length === 0) return undefined;
  if (kind === 'doorSide') return parts[0] === '' ? undefined : given.join(' ');
  if (kind === 'walls' || kind === 'point') return parts;
  if (kind === 'points') return given.map((point) => trimmed(point.split(',')));
  return listKinds.has(kind) && given.length > 1 ? given : given[0]!;
}

/** How many keys of the path stay when its answer is taken back: a thing with a name does; a list goes with its last value. */
function kept(path: Path, { asked }: FieldView): number {
  const placeholder = asked.path.findIndex((key) => /^<\w+>$/.test(key));
  if (placeholder < 0) return 0;
  const isValue = placeholder === asked.path.length - 1;
  return placeholder + (isValue ? -1 : 1) + path.length - asked.path.length;
}

/** Things whose name the setter chose stay with nothing behind it until they are taken out by hand. */
const staysBlank = ({ asked }: FieldView): boolean => asked.path.at(-1) === '<name>';

/** The job file with another answer in a thing that is written shortly: in full, or shortly again where that holds all. */
function inShortForm(text: string, thing: Path, key: string, value: Written | undefined): string | undefined {
  const now = valueAt(treeOf(text), thing);
  if (now === undefined || now === null || (typeof now === 'object' && !Array.isArray(now))) return undefined;
  const map = fullForm(thing, now);
  if (!map) return undefined;
  const changed = (value === undefined ? without(map, [key]) : withValue(map, [key], value)) as Readonly<
    Record<string, Written>
  >;
  return setText(text, thing, (shortForm(thing, changed) ?? changed) as Written);
}

/**
 * The job file with another answer to one question; an answer of empty parts is taken back. What a distance is measured `from` may
 * change with it.
 */
export function writeField(
  text: string,
  field: FieldView,
  values: readonly string[],
  from = field.from,
): string {
  const { asked, path } = field;
  const value = written(values, asked.kind);
  if (field.from !== undefined && from !== undefined && from !== field.from) {
    const key = `from ${from}`;
    const renamed = renameText(text, path, key);
    return writeField(renamed, { ...field, path: [...path.slice(0, -1), key], from }, values);
  }
  const short = inShortForm(text, path.slice(0, -1), String(path.at(-1)), value);
  if (short !== undefined) return short;
  const inFull = valueAt(treeOf(text), [...path, 'read']) === undefined ? path : [...path, 'read'];
  if (value !== undefined) return setText(text, inFull, value);
  return staysBlank(field) ? setText(text, path, null) : removeText(text, path, kept(path, field));
}
