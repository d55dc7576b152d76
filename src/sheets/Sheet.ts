import type { SheetContext } from './SheetContext.ts';
import type { Bundle, SheetView } from './SheetView.ts';

/** A kind of sheet: whom it serves, where it is bound, and how its data are made. */
export interface Sheet {
  /** Template and key of its words: `sheet.<name>.title`, `sheet.<name>.question`. */
  readonly name: string;
  /** Templates of its pages that are laid out otherwise, with words of their own: `sheet.<name>.title`. */
  readonly further?: readonly string[];
  readonly for: SheetView['for'];
  readonly bundles: readonly Bundle[];
  /** Whose language it speaks: crew sheets may carry a second one. */
  readonly speaks: 'crew' | 'owner';
  /** The pages of this kind for one packet; none when their data do not exist. */
  readonly make: (context: SheetContext) => readonly SheetPage[];
}

/** One page of a kind: `suffix` tells several of a kind apart (`zone-2`). */
export interface SheetPage {
  /** The floor it is of, whose name stands in its title where the job has several; its pages are told from another's by themselves. */
  readonly floor?: string;
  readonly suffix?: string;
  /** Which of the further templates it has, when not that of its kind. */
  readonly as?: string;
  /** Figures for the words of title and question. */
  readonly figures?: Readonly<Record<string, string | number>>;
  readonly landscape?: boolean;
  readonly scale?: string;
  /** Where this page is bound, when not where its kind is. */
  readonly bundles?: readonly Bundle[];
  /** For another job to be written on: it carries no name, revision or date of this one. */
  readonly blank?: true;
  readonly data: unknown;
}
