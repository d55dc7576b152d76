import { addCorner } from '../../form/addCorner.ts';
import { removeCorner } from '../../form/removeCorner.ts';
import { keysAt } from '../../form/roomNames.ts';
import { removeText, setText } from '../../form/setText.ts';
import { type StartShape, startText } from '../../form/startText.ts';
import type { Path } from '../../job/shape/Trouble.ts';
import type { System } from '../../measure/index.ts';
import type { FormContext } from './FormContext.ts';
import { listWord } from './listWord.ts';

/** What a button does to the job file: the text as it is then. */
export interface Act {
  readonly act: string;
  readonly path: Path;
  /** A name that was chosen beside the button. */
  readonly chosen?: string | undefined;
}

/** A name that no thing of the list bears yet: `door`, `door 2`. */
function freeName(word: string, taken: readonly string[]): string {
  const names = [word, ...taken.map((_, i) => `${word} ${i + 2}`)];
  return names.find((name) => !taken.includes(name)) ?? word;
}

function add({ path, chosen }: Act, { state, tree, say }: FormContext): string {
  const named = () => say(`form.new.${listWord(String(path.at(-1)))}`);
  const name = chosen ?? freeName(named(), keysAt(tree, path));
  return setText(state.text, [...path, name], {});
}

/** The job file after a button: things added and taken out, corners put in and taken away. Undefined for other buttons. */
export function actOn(act: Act, context: FormContext): string | undefined {
  const { state, floor } = context;
  if (act.act === 'add') return add(act, context);
  if (act.act === 'remove') return removeText(state.text, act.path, floor.length);
  if (act.act === 'addCorner') return addCorner(state.text, floor, String(act.path.at(-1)));
  if (act.act === 'removeCorner') return removeCorner(state.text, floor, String(act.path.at(-1)));
  return undefined;
}

/** A job file to begin with, dated on the day it is begun. */
export function begun(shape: string, units: string, now: Date): string {
  const two = (number: number) => String(number).padStart(2, '0');
  const date = `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
  return startText(shape as StartShape, units as System, date);
}
