/**
 * How far a fact can be trusted: `S` a published standard or code as reported in public (its paid text was not read),
 * `H` a free handbook that was read, `G` geometry, `P` common practice of the trade without a source, `M` from memory.
 */
export type Mark = 'S' | 'H' | 'G' | 'P' | 'M';

/** A fact of the trade. Its value is kept in the units in which it is printed at its source. */
export interface Fact<T> {
  readonly value: T;
  readonly mark: Mark;
  /** Name and section of the published text; `geometry`, `practice` or `memory` where there is none. */
  readonly source: string;
}
