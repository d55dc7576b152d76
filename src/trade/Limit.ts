import type { Ticks } from '../measure/index.ts';

/** A rule of the trade held against this job. Lengths are ticks, other units in the name of the figure. */
export interface Limit {
  readonly rule: string;
  readonly found: number | string;
  readonly limit: number | string;
  /** What `found` and `limit` are: `ticks`, `share`, `year`, … */
  readonly unit: string;
  /** Whether the limit is the most or the least that passes; missing for years and counts, which are told in words of their own, and in packets from before it was kept. */
  readonly bound?: 'most' | 'least';
  /** Ticks of straightedge that a gap was read under. */
  readonly over?: Ticks;
  readonly mark: 'S' | 'H' | 'G' | 'P' | 'M';
  readonly source: string;
  readonly pass: boolean;
  /** What would pass, as code and figures. */
  readonly wouldPass?: { readonly code: string; readonly figures: Readonly<Record<string, number | string>> };
  /** The layer that comes up and that this was read on: it is read again on what lies under it. */
  readonly readOn?: string;
  /** Pieces or edges concerned. */
  readonly at?: readonly string[];
  /** Surface and tile the rule was held against, where it is about one of them. */
  readonly surface?: string;
  readonly tile?: string;
  /** True where the trade advises and does not forbid: a failure warns, and whoever wants it so may sign. */
  readonly advice?: boolean;
}
