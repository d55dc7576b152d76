import type { Figures } from './Reader.ts';

const UNREAD = Symbol('unread');

/** Stands in the parsed file where a value could not be read, until `settle` takes it out. */
export interface Unread {
  readonly [UNREAD]: true;
  readonly code: string;
  readonly figures: Figures;
  readonly standIn: unknown;
}

/** Marks a value that could not be read. */
export function unread(code: string, figures: Figures, standIn: unknown): Unread {
  return { [UNREAD]: true, code, figures, standIn };
}

/** Whether a value is such a mark. */
export function isUnread(value: unknown): value is Unread {
  return typeof value === 'object' && value !== null && UNREAD in value;
}
