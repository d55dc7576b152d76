/** A sentence to come: key of the catalogue and its figures, named so that `figureKind` tells their units. */
export interface Step {
  readonly code: string;
  readonly figures: Readonly<Record<string, number | string>>;
}
