import type { Figures } from './Reader.ts';

/** A path of keys from the top of the job file. */
export type Path = readonly (string | number)[];

/** A problem before its place in the text is looked up. */
export interface Trouble {
  readonly code: string;
  readonly path: Path;
  readonly figures: Figures;
  /** Points at the key, not at what stands behind it. */
  readonly atKey?: boolean;
}
