import type { SectionView } from '../../form/FieldView.ts';
import { keysAt } from '../../form/roomNames.ts';
import { startShapes } from '../../form/startText.ts';
import type { FormContext } from './FormContext.ts';
import { fieldHtml } from './fieldHtml.ts';
import { listHtml } from './listHtml.ts';
import { roomHtml } from './roomHtml.ts';
import { plain, tag } from './tag.ts';

/** Sections that stand open at first. */
const openAtFirst: readonly string[] = ['walls', 'diagonals'];

function sectionHtml({ section, items, problems }: SectionView, context: FormContext): string {
  const { say } = context;
  const title = tag('h2', {}, plain(say(`form.section.${section}`)));
  const count =
    problems.length > 0
      ? tag('span', { class: 'badge' }, plain(say('form.problems', { n: problems.length })))
      : '';
  const inside = items.map((item) =>
    item.kind === 'field' ? fieldHtml(item.field, context) : listHtml(item.list, context),
  );
  return tag(
    'details',
    { class: 'section', id: `section:${section}`, open: openAtFirst.includes(section) },
    tag('summary', {}, title, count),
    tag('div', { class: 'inside' }, ...inside),
  );
}

function button(act: string, words: string, more: Readonly<Record<string, string>> = {}): string {
  return tag(
    'button',
    { type: 'button', id: `${act}${more['data-shape'] ?? ''}`, 'data-act': act, ...more },
    plain(words),
  );
}

/** How one begins: units, then the shape of the room; or with a file that is there already. */
function startHtml({ say }: FormContext): string {
  const units = (['inches', 'mm'] as const).map((one) =>
    tag(
      'label',
      { class: 'radio' },
      tag('input', {
        type: 'radio',
        name: 'units',
        id: `units-${one}`,
        value: one,
        checked: one === 'inches',
      }),
      plain(say(`form.units.${one}`)),
    ),
  );
  const shapes = startShapes.map((shape) =>
    button('start', say(`form.shape.${shape}`), { 'data-shape': shape }),
  );
  return tag(
    'section',
    { class: 'start', id: 'start' },
    tag('h2', {}, plain(say('form.start'))),
    tag(
      'fieldset',
      { class: 'field' },
      tag('legend', {}, plain(say('form.unitsName'))),
      tag('div', { class: 'boxes' }, ...units),
    ),
    tag('div', { class: 'acts', role: 'group', 'aria-label': say('form.start') }, ...shapes),
  );
}

/** Saving, loading, undoing; and the file itself, to be looked at, copied or pasted. */
function fileHtml({ say, state }: FormContext, started: boolean): string {
  const saving = started
    ? [button('save', say('form.save')), button('undo', say('form.undo')), button('anew', say('form.anew'))]
    : [];
  const load = tag('label', { class: 'load', for: 'load' }, plain(say('form.load')));
  const choose = tag('input', { type: 'file', id: 'load', accept: '.yaml,.yml,text/plain' });
  const text = tag(
    'textarea',
    { id: 'text', rows: 12, spellcheck: 'false', autocapitalize: 'none' },
    plain(state.text),
  );
  return tag(
    'section',
    { class: 'file', id: 'file' },
    tag('h2', {}, plain(say('form.file'))),
    tag('div', { class: 'acts' }, ...saving),
    tag('div', { class: 'field' }, load, choose),
    tag('ul', { class: 'problems', id: 'refused', hidden: true }),
    tag(
      'details',
      { id: 'as-text' },
      tag('summary', {}, plain(say('form.asText'))),
      tag('div', { class: 'field' }, tag('label', { for: 'text' }, plain(say('form.text'))), text),
      tag('div', { class: 'acts' }, button('use', say('form.use')), button('copy', say('form.copy'))),
    ),
  );
}

function floorHtml({ tree, floor, say }: FormContext): string {
  const floors = keysAt(tree, ['floors']);
  if (floor[0] !== 'floors' || floors.length < 2) return '';
  const options = floors.map((name) =>
    tag('option', { value: name, selected: name === floor[1] }, plain(name)),
  );
  return tag(
    'div',
    { class: 'field' },
    tag('label', { for: 'floor' }, plain(say('form.floor'))),
    tag('select', { id: 'floor' }, ...options),
  );
}

function elsewhereHtml({ view, problem, say }: FormContext): string {
  if (view.elsewhere.length === 0) return '';
  const list = view.elsewhere.map((one) => tag('li', {}, plain(problem(one, true))));
  return tag(
    'section',
    { id: 'elsewhere' },
    tag('h2', {}, plain(say('form.elsewhere'))),
    tag('ul', { class: 'problems' }, ...list),
  );
}

/** The whole form as HTML. */
export function formHtml(context: FormContext): string {
  const started = context.state.text.trim() !== '';
  if (!started)
    return tag('div', { class: 'columns', id: 'columns' }, startHtml(context) + fileHtml(context, false));
  const room = tag('div', { class: 'room', id: 'room' }, roomHtml(context));
  const questions = context.view.sections.map((section) => sectionHtml(section, context));
  return tag(
    'div',
    { class: 'columns both', id: 'columns' },
    room,
    tag(
      'div',
      { class: 'questions', id: 'questions' },
      floorHtml(context),
      ...questions,
      elsewhereHtml(context),
      fileHtml(context, true),
    ),
  );
}
