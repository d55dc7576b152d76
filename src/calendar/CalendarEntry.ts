/** One time on the job's clock. Local time without a zone, ISO `YYYY-MM-DDTHH:MM`. */
export interface CalendarEntry {
  /** `set`, `grout`, `walk`, `heavy`, `sealFrom`, `sealTo`, `seal`, `water`, `heat`. */
  readonly code: string;
  readonly from: string;
  readonly to?: string;
  readonly zone?: number;
  /** The wait it rests on and where that comes from. */
  readonly hours?: number;
  readonly source: string;
}
