import type { ExchangeFile } from '../exchange/ExchangeFile.ts';
import type { Packet } from '../packet/Packet.ts';
import type { Bundle, SheetView } from '../sheets/SheetView.ts';
import type { SawPart } from '../sheets/sawParts.ts';

/** The line of a job in the index of jobs. */
export interface JobCard {
  readonly title: string;
  readonly status: string;
  readonly revision: string;
  readonly date: string;
  readonly owner: string;
  readonly area: string;
  /** SVG of the plan, small; made by us, so safe to print as it is. */
  readonly thumbnail: string;
}

/** One print document: several sheets of a job one after another. */
export interface BundleView {
  readonly name: Bundle;
  readonly sheets: readonly SheetView[];
}

/** A sentence that the job page lists under its sheets. */
export interface Note {
  readonly level: 'info' | 'warn' | 'fail';
  readonly text: string;
}

/** All that the pages of one job are made from. */
export interface SiteJob {
  readonly slug: string;
  /** What the pages were built from; missing where they must be built again. */
  readonly mark?: string | undefined;
  /** The job file, for the form to correct; missing where only the index speaks of the job. */
  readonly text?: string;
  readonly lang: string;
  /** Missing while the job has never been built. */
  readonly card?: JobCard;
  readonly sheets: readonly SheetView[];
  readonly bundles: readonly BundleView[];
  /** The pages beside the saw, most often one; missing where nothing could be made. */
  readonly saw?: readonly SawPart[];
  readonly notes: readonly Note[];
  /** Written beside the packet for other programs. */
  readonly files: readonly ExchangeFile[];
  /** Ready sentences, one a problem of the job file. */
  readonly problems: readonly string[];
  /** The pages show an older state than the job file does. */
  readonly stale: boolean;
  /** `keep`: what stands in the output is left as it is, and only the index speaks of the job. */
  readonly pages: 'write' | 'keep';
  /** What the pages were made from; written beside them. */
  readonly packet?: Packet;
}
