/** A cell of a table: words that stand there, or nothing, to be written in. */
export type Cell = string;

/** Parts of a measuring page, one under the other. */
export type Block =
  | { readonly kind: 'drawing'; readonly svg: string }
  | { readonly kind: 'heading'; readonly text: string }
  | { readonly kind: 'note'; readonly text: string; readonly strong?: true }
  | { readonly kind: 'lines'; readonly lines: readonly string[] }
  | { readonly kind: 'table'; readonly table: Table }
  | { readonly kind: 'answers'; readonly answers: readonly Answer[] }
  | { readonly kind: 'side'; readonly parts: readonly (readonly Block[])[] };

/** Rows with a name each; a cell without words is a place to write. */
export interface Table {
  readonly head: readonly string[];
  readonly rows: readonly Row[];
  /** Read, not written in: rows as high as their words, cells without a rule. */
  readonly filled?: true;
  /** Names are written in too. */
  readonly wide?: true;
  /** Names are questions: wide and light. */
  readonly asks?: true;
}

export interface Row {
  readonly name: string;
  /** Number in a drawing beside the table. */
  readonly number?: number;
  /** What may be answered, in small print. */
  readonly hint?: string;
  readonly cells: readonly Cell[];
  /** Two lines high. */
  readonly high?: true;
  /** Something is wrong with it. */
  readonly marked?: true;
}

/** A question with a line to answer on. */
export interface Answer {
  readonly label: string;
  readonly hint: string;
}
