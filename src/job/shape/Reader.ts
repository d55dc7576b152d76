/** Figures of a problem or a default. */
export type Figures = Readonly<Record<string, string | number>>;

/** What one value of the job file says, or why it says nothing. */
export type Reading<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly code: string; readonly figures?: Figures };

/** How one kind of value is read, and what an editor is told of it. */
export interface Reader<T> {
  /** Takes a text, number or boolean as YAML gives it. */
  readonly read: (value: unknown) => Reading<T>;
  /** Goes on in place of a value that could not be read, so that the rest of the file is checked all the same. */
  readonly standIn: T;
  /** Part of the JSON Schema: `type`, `enum`, `examples`. */
  readonly json: Readonly<Record<string, unknown>>;
}

/**
 * A value that was read.
 *
 * @example
 * good(3) //=> { ok: true, value: 3 }
 */
export function good<T>(value: T): Reading<T> {
  return { ok: true, value };
}

/**
 * A value that could not be read.
 *
 * @example
 * bad('notADate') //=> { ok: false, code: 'notADate', figures: {} }
 */
export function bad(
  code: string,
  figures: Figures = {},
): { readonly ok: false; readonly code: string; readonly figures: Figures } {
  return { ok: false, code, figures };
}
