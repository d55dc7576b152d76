/** One thing wrong with a job file. It carries a path; the place in the text is looked up once, by the reader. */
export interface Problem {
  /** Key of the sentence in the catalogue, `problem.<code>`. */
  readonly code: string;
  /** Path of keys from the top of the file. */
  readonly path: readonly (string | number)[];
  readonly file?: string;
  /** 1-based. */
  readonly line?: number;
  readonly column?: number;
  /** Figures for the sentences: found, expected and the way out are separate sentences of the same code. */
  readonly found: string;
  readonly figures: Readonly<Record<string, string | number>>;
}
