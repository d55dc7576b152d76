import type { FieldView } from '../../form/FieldView.ts';
import { listKinds } from '../../form/fieldValues.ts';
import type { Problem } from '../../job/Problem.ts';
import type { AskedKind } from '../../sheets/measuring/AskedField.ts';
import type { FormContext } from './FormContext.ts';
import { type Attributes, plain, tag } from './tag.ts';

/** The keys that a telephone shows for each kind; lengths get their units from keys of our own. */
const keyboards: Partial<Readonly<Record<AskedKind, string>>> = {
  year: 'numeric',
  count: 'numeric',
  degrees: 'decimal',
  length: 'decimal',
  lengths: 'decimal',
  size: 'decimal',
  sizes: 'decimal',
  point: 'decimal',
  points: 'decimal',
  flatness: 'text',
};

/** Kinds in whose answers units are written. */
const measured: ReadonlySet<AskedKind> = new Set([
  'length',
  'lengths',
  'size',
  'sizes',
  'point',
  'points',
  'doorSide',
  'flatness',
  'heightAbove',
]);

const idOf = (field: FieldView, part: number): string => `${field.id}.${part}`;
const problemsId = (field: FieldView): string => `${field.id}.problems`;

/** Problems of one place, each with what was found, what was expected and the way out. */
export function problemsHtml(problems: readonly Problem[], id: string, { problem }: FormContext): string {
  return tag(
    'ul',
    { class: 'problems', id, hidden: problems.length === 0 },
    ...problems.map((one) => tag('li', {}, plain(problem(one, false)))),
  );
}

function common(field: FieldView, part: number): Attributes {
  const wrong = field.problems.length > 0;
  return {
    id: idOf(field, part),
    'data-part': part,
    'aria-invalid': wrong ? 'true' : undefined,
    'aria-describedby': wrong ? problemsId(field) : undefined,
  };
}

interface Part {
  readonly field: FieldView;
  readonly part: number;
  readonly value: string;
  /** Told to those who cannot see which of several it is. */
  readonly name?: string;
}

function input({ field, part, value, name }: Part): string {
  const { kind } = field.asked;
  const isDate = kind === 'date' && /^(\d{4}-\d\d-\d\d)?$/.test(value);
  const isPhone = field.asked.path.at(-1) === 'phone';
  return tag('input', {
    ...common(field, part),
    type: isDate ? 'date' : isPhone ? 'tel' : 'text',
    inputmode: isDate ? undefined : keyboards[kind],
    'data-units': measured.has(kind) ? true : undefined,
    value,
    'aria-label': name,
    autocomplete: 'off',
    autocapitalize: measured.has(kind) ? 'none' : undefined,
    spellcheck: 'false',
  });
}

function select(
  { field, part, value, name }: Part,
  options: readonly (readonly [value: string, words: string])[],
): string {
  const chosen = options.find(([one]) => one.toLowerCase() === value.toLowerCase())?.[0];
  const all = chosen === undefined ? [...options, [value, value] as const] : options;
  return tag(
    'select',
    { ...common(field, part), 'aria-label': name },
    ...all.map(([one, words]) =>
      tag('option', { value: one, selected: one === (chosen ?? value) }, plain(words)),
    ),
  );
}

const blank = (say: FormContext['say']) => ['', say('form.notSaid')] as const;
const names = (field: FieldView) => field.names.map((name) => [name, name] as const);

/** How many boxes a list of answers gets: two for two readings, and one more than there are. */
function boxes({ asked, values }: FieldView): number {
  if (asked.kind === 'points') return Math.max(3, values.length + 1);
  if (asked.kind === 'point') return 2;
  return listKinds.has(asked.kind) ? Math.max(2, values.length + 1) : 1;
}

function choices(field: FieldView, { say }: FormContext) {
  const { asked } = field;
  if (asked.kind === 'yesNo') return ['yes', 'no'].map((one) => [one, say(`form.${one}`)] as const);
  return (asked.choices ?? []).map((one) => [one, say(`ask.choices.${one}`)] as const);
}

/** The boxes of one answer. */
function controls(field: FieldView, label: string, context: FormContext): string {
  const { say } = context;
  const { kind } = field.asked;
  const value = (part: number) => field.values[part] ?? '';
  const named = (part: number) => ({ field, part, value: value(part), name: `${label}, ${part + 1}` });
  if (kind === 'choice' || kind === 'yesNo')
    return select({ field, part: 0, value: value(0) }, [blank(say), ...choices(field, context)]);
  if (kind === 'wall') return select({ field, part: 0, value: value(0) }, [blank(say), ...names(field)]);
  if (kind === 'walls')
    return [0, 1].map((part) => select(named(part), [blank(say), ...names(field)])).join('');
  if (kind === 'doorSide') {
    const sides = (['plain', 'undercut', 'post'] as const).map(
      (one) => [one, say(`form.side.${one}`)] as const,
    );
    return (
      select(named(0), [blank(say), ...sides]) +
      input({ ...named(1), name: say('form.side.size', { side: label }) })
    );
  }
  const count = boxes(field);
  if (count === 1) return input({ field, part: 0, value: value(0) });
  return Array.from({ length: count }, (_, part) => input(named(part))).join('');
}

/** A distance from something: from what, and how far. */
function fromControls(field: FieldView, label: string, { say }: FormContext): string {
  const about = { 'data-from': true, 'aria-label': say('form.from', { what: label }) };
  const what = tag(
    'select',
    { id: `${field.id}.from`, ...about },
    ...[...new Set([...field.names, field.from ?? ''])].map((name) =>
      tag('option', { value: name, selected: name === field.from }, plain(name)),
    ),
  );
  const count = listKinds.has(field.asked.kind) ? boxes(field) : 1;
  const parts = Array.from({ length: count }, (_, part) => {
    const name = say('form.distance', { what: label, from: field.from ?? '' });
    return input({
      field,
      part,
      value: field.values[part] ?? '',
      name: count === 1 ? name : `${name}, ${part + 1}`,
    });
  });
  return what + parts.join('');
}

const severalBoxes = (field: FieldView): boolean =>
  field.from !== undefined || boxes(field) > 1 || ['walls', 'doorSide'].includes(field.asked.kind);

/** One question with its boxes, and what is wrong with its answer. `label` takes the place of the question's own words. */
export function fieldHtml(field: FieldView, context: FormContext, label?: string): string {
  const words = label ?? context.say(field.asked.words);
  const problems = problemsHtml(field.problems, problemsId(field), context);
  const shown = plain(words);
  if (field.byHand !== undefined) {
    const note = tag(
      'p',
      { class: 'note' },
      plain(context.say('form.byHand')),
      ' ',
      tag('code', {}, plain(field.byHand)),
    );
    return tag(
      'div',
      { class: 'field', id: `field:${field.id}` },
      tag('p', { class: 'label' }, shown),
      note,
      problems,
    );
  }
  const { kind } = field.asked;
  const box = {
    class: 'field',
    id: `field:${field.id}`,
    'data-field': field.id,
    'data-kind': field.from === undefined ? kind : 'from',
  };
  if (!severalBoxes(field)) {
    const one = tag('label', { for: idOf(field, 0) }, shown);
    return tag('div', box, one, controls(field, words, context), problems);
  }
  const inside =
    field.from === undefined ? controls(field, words, context) : fromControls(field, words, context);
  return tag('fieldset', box, tag('legend', {}, shown), tag('div', { class: 'boxes' }, inside), problems);
}
