/// <reference lib="dom" />
/// <reference lib="dom.iterable" />

import { renameText } from '../../form/setText.ts';
import { writeField } from '../../form/writeField.ts';
import { readJob } from '../../job/readJob.ts';
import { readYaml } from '../../job/yaml/readYaml.ts';
import { unreadNote } from '../../sheets/cautiousSay.ts';
import { makeWords, type Words } from '../makeWords.ts';
import { actOn, begun } from './actOn.ts';
import type { FormContext, FormState } from './FormContext.ts';
import { formHtml } from './formHtml.ts';
import { makeFormContext } from './makeFormContext.ts';
import { morph } from './morph.ts';
import { rememberedState, rememberState } from './rememberedState.ts';
import { copyText, saveFile } from './saveFile.ts';
import { startUnitKeys } from './startUnitKeys.ts';

const byId = (id: string): HTMLElement | null => document.getElementById(id);

/** The form while it is open: the one place that changes. */
interface Form {
  readonly words: Words;
  state: FormState;
  context: FormContext;
  readonly history: string[];
  /** While the page is being changed, a box that goes tells of a last change: it is none. */
  showing: boolean;
  /** A drawing that is put off until the fingers rest. */
  timer: number;
}

const mostUndone = 100;
/** Milliseconds without a stroke after which the room is drawn again. */
const rest = 150;

function busyField(): Element | null {
  return document.activeElement?.closest('[data-field]') ?? null;
}

/** Shows the state as it is. */
function show(form: Form): void {
  clearTimeout(form.timer);
  form.timer = 0;
  form.context = makeFormContext(form.state, form.words);
  const { say } = form.context;
  const next = document.createElement('main');
  next.innerHTML = formHtml(form.context);
  form.showing = true;
  morph(byId('form')!, next, busyField());
  form.showing = false;
  document.documentElement.lang = form.state.lang;
  document.title = say('form.title');
  byId('title')!.textContent = say('form.title');
  byId('home')!.textContent = say('site.allJobs');
  byId('unread')!.textContent = unreadNote([form.state.lang], form.words);
  byId('languages')!.setAttribute('aria-label', say('form.language'));
  for (const button of document.querySelectorAll('[data-lang]'))
    button.setAttribute('aria-pressed', String(button.getAttribute('data-lang') === form.state.lang));
}

/** Shows what was put off, so that what follows finds the state as it is. */
function settle(form: Form): void {
  if (form.timer !== 0) show(form);
}

/** Takes a new state, remembers it and shows it: at once, or when the fingers rest. */
function take(form: Form, changed: Partial<FormState>, later = false): void {
  if (changed.text !== undefined && changed.text !== form.state.text) {
    form.history.push(form.state.text);
    if (form.history.length > mostUndone) form.history.shift();
  }
  form.state = { ...form.state, ...changed };
  rememberState(form.state);
  clearTimeout(form.timer);
  if (later) form.timer = window.setTimeout(() => show(form), rest);
  else show(form);
}

/** Takes a file in, unless it cannot be read at all: then it says where and why, and what was there stays. */
function load(form: Form, given: string): void {
  const text = given.replace(/\r\n?/g, '\n').replace(/^\ufeff/, '');
  const refused = readYaml(text).value === undefined ? readJob(text, 'job.yaml', 'job').problems : [];
  if (refused.length === 0) take(form, { text });
  const list = byId('refused')!;
  list.hidden = refused.length === 0;
  list.replaceChildren(
    ...refused.map((problem) => {
      const item = document.createElement('li');
      item.textContent = form.context.problem(problem, true);
      return item;
    }),
  );
  if (refused.length > 0) list.scrollIntoView({ block: 'center' });
}

const writtenIn = (element: Element): string =>
  element instanceof HTMLInputElement || element instanceof HTMLSelectElement ? element.value : '';

/** Writes the answer that stands in the boxes of a question into the job file. */
function answer(form: Form, box: Element, later: boolean): void {
  const field = form.context.fields.get(box.getAttribute('data-field') ?? '');
  if (!field) return;
  const parts = [...box.querySelectorAll('[data-part]')].map(writtenIn);
  // An answer that is wiped out to be written anew is taken back only when it is left so.
  if (later && parts.every((part) => part.trim() === '')) return;
  const from = box.querySelector<HTMLSelectElement>('[data-from]')?.value;
  const text = writeField(form.state.text, field, parts, from);
  // Until it is shown again, a next stroke must find the question where it stands now.
  if (text !== form.state.text) take(form, { text }, later);
  else if (!later) show(form);
}

function changed(form: Form, target: Element): void {
  settle(form);
  const box = target.closest('[data-field]');
  if (box) answer(form, box, false);
  else if (target.hasAttribute('data-rename')) {
    const path = JSON.parse(target.getAttribute('data-rename')!) as string[];
    take(form, { text: renameText(form.state.text, path, writtenIn(target).trim()) });
  } else if (target.id === 'floor') take(form, { floor: writtenIn(target) });
  else if (target instanceof HTMLInputElement && target.type === 'file') {
    const [file] = target.files ?? [];
    file?.text().then((text) => load(form, text));
    target.value = '';
  }
}

/** Opens what hides a problem and brings it under the eyes. */
function goToFirst(): void {
  const first = document.querySelector('#questions .problems:not([hidden]) li');
  if (!first) return;
  for (let at = first.closest('details'); at; at = at.parentElement?.closest('details') ?? null)
    at.open = true;
  const box = first.closest('[data-field]')?.querySelector<HTMLElement>('input, select');
  box?.focus({ preventScroll: true });
  first.scrollIntoView({ block: 'center' });
}

function pressed(form: Form, button: Element): void {
  settle(form);
  const act = button.getAttribute('data-act') ?? '';
  const path = JSON.parse(button.getAttribute('data-path') ?? '[]') as string[];
  const chosen = button.parentElement?.querySelector('select')?.value;
  const text = actOn({ act, path, chosen }, form.context);
  const box = byId('text') as HTMLTextAreaElement | null;
  const units = document.querySelector<HTMLInputElement>('input[name=units]:checked')?.value;
  if (text !== undefined) take(form, { text });
  else if (act === 'start')
    take(form, { text: begun(button.getAttribute('data-shape') ?? '', units ?? '', new Date()) });
  else if (act === 'anew') take(form, { text: '' });
  else if (act === 'save') saveFile(form.state.text, 'job.yaml');
  else if (act === 'copy') copyText(form.state.text, box);
  else if (act === 'use') load(form, box?.value ?? '');
  else if (act === 'first') goToFirst();
  else if (act === 'undo' && form.history.length > 0) {
    const before = form.history.pop()!;
    take(form, { text: before });
    form.history.pop();
  }
}

function listen(form: Form): void {
  const main = byId('form')!;
  main.addEventListener('input', ({ target }) => {
    const box = (target as Element).closest('[data-field]');
    if (box && target instanceof HTMLInputElement) answer(form, box, true);
  });
  main.addEventListener('change', ({ target }) => {
    if (!form.showing) changed(form, target as Element);
  });
  document.addEventListener('click', ({ target }) => {
    const lang = (target as Element).closest('[data-lang]')?.getAttribute('data-lang');
    if (lang) take(form, { lang });
    const button = (target as Element).closest('[data-act]');
    if (button) pressed(form, button);
  });
}

/** The job file that a link brought along: `form.html#job=…`. */
function broughtAlong(): string | undefined {
  const [, given] = /^#job=(.*)$/s.exec(location.hash) ?? [];
  if (given === undefined) return undefined;
  history.replaceState(null, '', location.pathname);
  try {
    return decodeURIComponent(given);
  } catch {
    return undefined;
  }
}

function startForm(): void {
  const words = makeWords(JSON.parse(byId('words')!.textContent ?? '{}'));
  const kept = rememberedState();
  const usual = words.languages.find((lang) => navigator.language.startsWith(lang)) ?? words.languages[0]!;
  const lang = words.languages.find((one) => one === kept.lang) ?? usual;
  const state: FormState = { text: String(kept.text ?? ''), lang };
  const form: Form = {
    words,
    state,
    context: makeFormContext(state, words),
    history: [],
    showing: false,
    timer: 0,
  };
  show(form);
  listen(form);
  startUnitKeys();
  const given = broughtAlong();
  if (given !== undefined) load(form, given);
}

startForm();
