import type { Gate } from './Gate.ts';
import { gates } from './gates.ts';
import { type SheetContext, sheetContext } from './SheetContext.ts';

/** A gate for a crew of two languages. */
export interface BothGate extends Gate {
  /** What the second language says of it; empty where there is none, or where it has passed. */
  readonly second: string;
}

/**
 * The gates with what the crew's second language says of each: all of a box that stops or holds the work, since nobody may take it
 * for something else; of what fails what is asked and what to do, and of what else has not passed yet what is asked.
 */
export function bothGates(context: SheetContext): readonly BothGate[] {
  const { packet, second } = context;
  const also = second ? gates(sheetContext(packet, second)) : [];
  return gates(context).map((gate, i) => {
    const other = also[i];
    if (!other) return { ...gate, second: '' };
    if (!isBox(gate)) return { ...gate, second: questionOf(other) };
    return { ...gate, note: inOwn(gate.note, second), second: `${other.what}. ${other.note}` };
  });
}

/** A caution of a language that nobody has read has English beside it, which is not said again by a second language that is English. */
function inOwn(note: string, second: SheetContext['second']): string {
  return second?.lang === 'en' ? note.split(' · ')[0]! : note;
}

/** Whether a gate stands in a box across the page. */
export const isBox = ({ stop, holds }: Gate): boolean => stop === true || holds === true;

function questionOf({ what, state, note }: Gate): string {
  if (state === 'pass') return '';
  // Who does it stands in brackets, in the first language already.
  const asked = what.replace(/ \([^)]*\)/g, '');
  // What is wanted stands before the semicolon; the figures after it are in the first language already.
  return state === 'fail' && note !== '' ? `${asked}: ${note.split('; ')[0]!.replace(/\.$/, '')}.` : asked;
}
