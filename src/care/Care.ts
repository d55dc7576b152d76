/** What the owner is told: each line a code with figures, chosen by this job's tile, grout and sealer. */
export interface Care {
  readonly seal: {
    readonly needed: boolean;
    readonly what: readonly ('grout' | 'tile')[];
    readonly beforeGrouting: boolean;
  };
  readonly dates: {
    readonly walk: string;
    readonly heavy: string;
    readonly wet: string;
    readonly sealFrom?: string;
    readonly sealTo?: string;
    /** Closed again while the sealer dries. */
    readonly closedFrom?: string;
    readonly closedTo?: string;
    /** By when it should be sealed, where the hours booked for it come later. */
    readonly sealMissed?: string;
    readonly checkAgainMonths?: number;
  };
  readonly dos: readonly CareLine[];
  readonly donts: readonly CareLine[];
  readonly cautions: readonly CareLine[];
  readonly used: readonly CareLine[];
}

export interface CareLine {
  readonly code: string;
  readonly figures: Readonly<Record<string, number | string>>;
}
