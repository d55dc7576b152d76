import type { GroupView, ListView } from '../../form/FieldView.ts';
import type { Path } from '../../job/shape/Trouble.ts';
import { printLength } from '../../measure/index.ts';
import type { FormContext } from './FormContext.ts';
import { fieldHtml, problemsHtml } from './fieldHtml.ts';
import { listWord } from './listWord.ts';
import { plain, tag } from './tag.ts';

const pathText = (path: Path): string => JSON.stringify(path);
const idText = (path: Path): string => path.join('/').replace(/\s+/g, '_');

/** A button that does something to a place in the job file. */
export function actButton(act: string, path: Path, words: string, label?: string): string {
  return tag(
    'button',
    {
      type: 'button',
      id: `${act}:${idText(path)}`,
      'data-act': act,
      'data-path': pathText(path),
      'aria-label': label,
    },
    plain(words),
  );
}

/** What the adjustment made of the reading of a wall or diagonal, where it changed it by 1/64 in or 0.1 mm at the least. */
function usedHtml({ name, path }: GroupView, what: string, { room, say }: FormContext): string {
  const kind = what === 'walls' ? 'wall' : 'diagonal';
  const reading = room?.adjustment?.readings.find((one) => one.kind === kind && one.id === name);
  if (!room || !reading || (what !== 'walls' && what !== 'diagonals')) return '';
  const correction = printLength(Math.abs(reading.correction), room.system);
  if (Math.abs(reading.correction) < 64) return '';
  const sign = reading.correction > 0 ? '+' : '−';
  const used = printLength(reading.used, room.system, { feet: true });
  return tag(
    'p',
    { class: 'used', id: `used:${idText(path)}` },
    plain(say('form.used', { used, correction: `${sign}${correction}` })),
  );
}

function isSuspect({ name }: GroupView, what: string, { room }: FormContext): boolean {
  if (what === 'walls') return room?.walls.find(({ id }) => id === name)?.state === 'suspect';
  return what === 'diagonals' && room?.diagonals.find(({ id }) => id === name)?.suspect === true;
}

const groupProblems = (group: GroupView, context: FormContext): string =>
  problemsHtml(group.problems, `problems:${idText(group.path)}`, context);

/** A wall: its readings at once, the rest when it is wanted, with the means to put in a corner or take one out. */
function wallHtml(group: GroupView, context: FormContext): string {
  const { say } = context;
  const [read, ...rest] = group.fields;
  const end = group.name.split('-').at(-1) ?? '';
  const figures = { wall: group.name, corner: end };
  const corners = [
    actButton('addCorner', group.path, say('form.addCorner', figures)),
    actButton('removeCorner', group.path, say('form.removeCorner', figures)),
  ];
  const more = tag(
    'details',
    { id: `more:${idText(group.path)}` },
    tag('summary', {}, plain(say('form.aboutWall', figures))),
    ...rest.map((field) => fieldHtml(field, context)),
    tag('div', { class: 'acts' }, ...corners),
  );
  const label = say('form.wall', figures);
  return (
    (read ? fieldHtml(read, context, label) : '') +
    usedHtml(group, 'walls', context) +
    groupProblems(group, context) +
    more
  );
}

/** The name of a thing, which can be changed where it is one's own, and the means to take the thing out. */
function nameHtml(group: GroupView, list: ListView, { say }: FormContext): string {
  const id = `name:${idText(group.path)}`;
  const figures = { name: group.name };
  const remove = actButton('remove', group.path, say('form.remove'), say('form.removeNamed', figures));
  if (!list.ownNames)
    return tag(
      'div',
      { class: 'name', id: `named:${idText(group.path)}` },
      tag('h3', {}, plain(group.name)),
      remove,
    );
  const label = tag('label', { for: id }, plain(say('form.name')));
  const input = tag('input', {
    id,
    type: 'text',
    value: group.name,
    'data-rename': pathText(group.path),
    autocomplete: 'off',
    autocapitalize: 'none',
    spellcheck: 'false',
  });
  return tag(
    'div',
    { class: 'name', id: `named:${idText(group.path)}` },
    tag('div', { class: 'field' }, label, input),
    remove,
  );
}

function groupHtml(group: GroupView, list: ListView, context: FormContext): string {
  const suspect = isSuspect(group, list.what, context);
  const marked = suspect
    ? tag(
        'p',
        { class: 'suspect', id: `suspect:${idText(group.path)}` },
        plain(context.say('form.suspectMark')),
      )
    : '';
  const inside =
    list.what === 'walls'
      ? wallHtml(group, context)
      : nameHtml(group, list, context) +
        group.fields.map((field) => fieldHtml(field, context)).join('') +
        usedHtml(group, list.what, context) +
        groupProblems(group, context);
  const box = { class: suspect ? 'group is-suspect' : 'group', id: `group:${idText(group.path)}` };
  return tag('div', box, marked, inside);
}

/** The means to add a thing: under a name of its own, or one of those that are left. */
function addHtml(list: ListView, { say }: FormContext): string {
  if (list.what === 'walls') return '';
  const words = say(`form.add.${listWord(list.what)}`);
  if (list.ownNames) return tag('div', { class: 'acts' }, actButton('add', list.path, words));
  if (list.toAdd.length === 0) return '';
  const id = `choose:${idText(list.path)}`;
  const options = list.toAdd.map((name) => tag('option', { value: name }, plain(name)));
  const choose = tag('select', { id, 'aria-label': words }, ...options);
  return tag('div', { class: 'acts' }, choose, actButton('add', list.path, words));
}

/** All things of a kind, what is wrong with them together, and the means to add one. */
export function listHtml(list: ListView, context: FormContext): string {
  const problems = problemsHtml(list.problems, `problems:${idText(list.path)}`, context);
  const groups = list.groups.map((group) => groupHtml(group, list, context));
  return tag(
    'div',
    { class: 'list', id: `list:${idText(list.path)}` },
    problems,
    ...groups,
    addHtml(list, context),
  );
}
