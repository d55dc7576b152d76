/** Parts of the first visit, in the order in which they are taken. */
export type AskedSection =
  | 'job'
  | 'house'
  | 'site'
  | 'walls'
  | 'diagonals'
  | 'corners'
  | 'baseLine'
  | 'doorways'
  | 'obstacles'
  | 'floor'
  | 'base'
  | 'heights'
  | 'tile';

/**
 * How an answer is written in the job file: `lengths` one length or a list of them; `size` two lengths, `a x b`; `sizes` one
 * such or a list; `point` a list of two lengths, of which the second may be negative; `points` a list of
 * lists of lengths, such as `[length, length]`; `middle` a length and `in` or `out`; `wall` a name, `walls` two of them; `doorSide` `plain`,
 * `undercut <length>` or `post <length> x <length>`; `heightAbove` `<length> above <layer>`; `flatness` a list of
 * `<length> under <length> <where>`; `degrees` and `count` plain numbers.
 */
export type AskedKind =
  | 'text'
  | 'date'
  | 'year'
  | 'yesNo'
  | 'choice'
  | 'count'
  | 'degrees'
  | 'length'
  | 'lengths'
  | 'middle'
  | 'size'
  | 'sizes'
  | 'point'
  | 'points'
  | 'wall'
  | 'walls'
  | 'doorSide'
  | 'heightAbove'
  | 'flatness';

/** One thing that is asked on the first visit, and where the answer stands in the job file. */
export interface AskedField {
  readonly section: AskedSection;
  /**
   * Keys from the top of the job file. `<wall>` stands for a wall such as `A-B`, `<diagonal>` for one such as `A-C`,
   * `<corner>` for a corner such as `A`, `<name>` for a name of one's own; so do `from <wall>` and `from <corner>`.
   */
  readonly path: readonly string[];
  /** Key of its label. */
  readonly words: string;
  readonly kind: AskedKind;
  /** Values of a choice as the job file has them; the words of each stand under `ask.choices`. */
  readonly choices?: readonly string[];
  /** Whether the file can't be read without it. */
  readonly required?: true;
}
