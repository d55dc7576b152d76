import type { Say } from '../SheetView.ts';
import type { AskedField } from './AskedField.ts';
import { askedFields } from './askedFields.ts';
import type { Answer, Block, Row, Table } from './Block.ts';

/** The questions whose path begins so, in their order. */
export function asked(...start: readonly string[]): readonly AskedField[] {
  return askedFields.filter(({ path }) => start.every((key, i) => path[i] === key));
}

/** The one question at a path. */
export function askedAt(...path: readonly string[]): AskedField {
  const found = asked(...path)[0];
  if (!found) throw new Error(`nothing is asked at ${path.join('/')}`);
  return found;
}

/** What may be answered: the words of a choice, or yes and no. */
function hintOf({ kind, choices = [] }: AskedField, say: Say): string {
  const sides = kind === 'doorSide' ? ['plain', 'undercut', 'post'] : choices;
  return kind === 'yesNo'
    ? say('ask.yesNo')
    : sides.map((choice) => say(`ask.choices.${choice}`)).join(' · ');
}

/** Empty cells. */
export const blanks = (count: number): readonly string[] => Array.from({ length: count }, () => '');

/** Questions as lines to answer on. */
export function answersOf(fields: readonly AskedField[], say: Say): Block {
  const answers = fields.map((field): Answer => ({ label: say(field.words), hint: hintOf(field, say) }));
  return { kind: 'answers', answers };
}

/** Questions down, things across: `count` columns with a place for the name of each. */
export function columnsOf(fields: readonly AskedField[], name: string, count: number, say: Say): Block {
  const rows = fields.map(
    (field, i): Row => ({
      name: say(field.words),
      number: i + 1,
      hint: hintOf(field, say),
      cells: blanks(count),
      // Twice the same: from two walls.
      ...(field.path.at(-1) === 'from <wall>' ? { high: true as const } : {}),
    }),
  );
  const table: Table = {
    head: [],
    rows: [{ name: say(name), cells: blanks(count) }, ...rows],
    asks: true,
  };
  return { kind: 'table', table };
}

/** Things down, questions across; names that are known stand there. `double` questions get two columns. */
export function rowsOf(
  fields: readonly AskedField[],
  name: string,
  names: readonly string[],
  say: Say,
  head: readonly string[] = fields.map((field) => say(field.words)),
): Block {
  const rows = names.map((one): Row => ({ name: one, cells: blanks(head.length) }));
  const wide = names.includes('') ? { wide: true as const } : {};
  return { kind: 'table', table: { head: [say(name), ...head], rows, ...wide } };
}
