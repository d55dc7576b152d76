/** One figure of the bench: what is measured, and what it should stay under. */
export interface Step {
  readonly name: string;
  readonly unit: 'ms' | 'MB' | 'kB' | '%' | 'tiles' | 'ft/1000';
  /** Missing for figures that stand there to compare with. */
  readonly target?: number;
  /** Measures once or more; the median of the values counts. */
  readonly measure: () => Promise<readonly number[]>;
}
