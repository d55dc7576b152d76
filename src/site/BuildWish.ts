import type { Core } from './Core.ts';

export interface BuildWish {
  /** Jobs to build; all when there are none. */
  readonly names: readonly string[];
  readonly browser?: string;
  readonly progress: (text: string) => void;
  /** Another core than the program's own, for tests. */
  readonly core?: Core;
  /** Another fingerprint than the program's own, for tests. */
  readonly program?: string;
  /** Another folder of sheet templates, for tests. */
  readonly sheetFolder?: string;
}
