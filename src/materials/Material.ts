import type { Ticks } from '../measure/index.ts';

/** One line of the material tally: the sum, the rate and where the rate comes from. */
export interface Material {
  /** `tile`, `fill`, `layer`, `bond`, `mortar`, `grout`, `sealant`, `backer`, `tape`, `profile`, `sealer`, `ring`. */
  readonly what: string;
  /** Name or colour of the product where the job gives one. */
  readonly name?: string;
  /** Of what is sold in sizes, a line of its own each: the diameter or the width, in ticks. */
  readonly size?: Ticks;
  /** Steps of the sum in order: code and figures; the catalogue turns each into a line. */
  readonly sum: readonly {
    readonly code: string;
    readonly figures: Readonly<Record<string, number | string>>;
  }[];
  readonly rate: { readonly value: number; readonly unit: string };
  /** `S`, `H`, `G`, `P`, `M`, or `job` for the product's own sheet. */
  readonly mark: string;
  readonly source: string;
  /** Amount needed before rounding to what is sold. */
  readonly amount: number;
  readonly unit: string;
  /** What to buy, in packages; where no package is known, the amount with what is bought beyond it. */
  readonly buy: number;
  readonly buyUnit: string;
}
