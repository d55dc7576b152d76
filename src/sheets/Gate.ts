/** A gate: what must be true before a tile is set, with room to write what was found. */
export interface Gate {
  readonly what: string;
  /** Whether the limit is a most, a least, or what it should be, in words; missing where it is none of them. */
  readonly bound?: string;
  readonly limit: string;
  /** Already known from the job file; empty where it is found on the floor. */
  readonly found: string;
  /** `pass`, `fail`, `advice` where the trade advises and does not forbid, or `open` where only the floor can tell. */
  readonly state: 'pass' | 'fail' | 'advice' | 'open';
  /** A question of health: nobody may sign it away. */
  readonly stop?: boolean;
  /** Whether it holds the work until it is settled: nothing is snapped, sawn or bought before. */
  readonly holds?: boolean;
  /** Of a stop: for which houses the rule holds, and what this one is. */
  readonly held?: string;
  /** Whether it passes, in words, where a figure was held against another, or where it fails. */
  readonly mark?: string;
  /** Whether whoever wants it so all the same may sign for it. */
  readonly signed?: boolean;
  /** What to do, or what would pass. */
  readonly note: string;
  readonly source: string;
}
