import type { Core } from './Core.ts';
import type { Printer } from './printer.ts';

export interface BuildWish {
  /** Jobs to build; all when there are none. */
  readonly names: readonly string[];
  readonly browser?: string | undefined;
  /** Started already; the build closes it. */
  readonly printer?: Printer | undefined;
  readonly progress: (text: string) => void;
  /** Another core than the program's own, for tests. */
  readonly core?: Core;
  /** Another fingerprint than the program's own, for tests. */
  readonly program?: string;
  /** Another folder of sheet templates, for tests. */
  readonly sheetFolder?: string;
}
