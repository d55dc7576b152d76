import type { System } from '../measure/index.ts';

/** Puts a code and its figures into words of one language. */
export type Say = (code: string, figures?: Readonly<Record<string, unknown>>) => string;

export type Bundle = 'crew' | 'templates' | 'owner' | 'office' | 'packet' | 'measuring';

/** One sheet as its template gets it: plain data, ready to print, without arithmetic left to do. */
export interface SheetView {
  /** File name of the page, unique in the job: `layout-plan`, `zone-2`. */
  readonly name: string;
  /** Template in `layouts/_includes/sheets/`, without `.njk`. */
  readonly template: string;
  readonly title: string;
  /** The one question that the sheet answers. */
  readonly question: string;
  readonly lang: string;
  /** The crew's second language, printed small under the first. */
  readonly second?: string;
  /** Says which of its languages nobody has read yet whose own language it is; missing when all are read. */
  readonly unread?: string;
  /** Said beside the title where readings do not agree, so that nothing is snapped or sawn by this sheet yet. */
  readonly hold?: string;
  /** The word that says that the floor is laid: what the sheet asks for is done. */
  readonly laid?: string;
  readonly for: 'setter' | 'estimator' | 'owner' | 'all';
  readonly bundles: readonly Bundle[];
  readonly landscape: boolean;
  readonly paper: 'letter' | 'a4';
  /** `1:12`, or missing where nothing is drawn to scale. */
  readonly scale?: string;
  /** Whether check bars stand on the sheet; its foot then says how to use them. */
  readonly bars: boolean;
  /** The units that its figures are printed in. */
  readonly units: System;
  /** Half a unit, by which a check bar in mm may be out, with the decimal mark of the sheet. */
  readonly half: string;
  /** Which job this is; missing on a blank sheet, which serves the next one. */
  readonly head?: {
    readonly job: string;
    readonly revision: string;
    readonly date: string;
    readonly stamp: string;
  };
  readonly data: unknown;
}
