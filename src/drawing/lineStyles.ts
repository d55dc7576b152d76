/** A pen: width in mm of paper, from the series of ISO 128; dashes in mm; round ends make dots of dashes without length. */
export interface LineStyle {
  readonly width: number;
  readonly dash?: readonly number[];
  readonly cap?: 'round' | 'square';
}

/** Every line of the drawing language has a name, and a name always looks the same. */
export const lineStyles = {
  wall: { width: 0.7, cap: 'square' },
  /** A wall's face that a tape reaches, on the set-out. */
  face: { width: 1, cap: 'square' },
  /** A face that it does not reach. */
  hiddenFace: { width: 0.35, dash: [3, 1.5] },
  fixture: { width: 0.5 },
  opening: { width: 0.35, dash: [2, 1] },
  piece: { width: 0.25 },
  hardPiece: { width: 0.5 },
  joint: { width: 0.18 },
  factory: { width: 1, cap: 'square' },
  sawn: { width: 0.35 },
  fullTile: { width: 0.18, dash: [2, 1] },
  /** The very edge of a piece at full size. */
  exact: { width: 0.18 },
  /** Where the next page of a drawing goes on. */
  match: { width: 0.7, dash: [12, 2, 2, 2, 2, 2] },
  /** Where pages are joined, and where a drawing is broken off. */
  register: { width: 0.25 },
  chalk: { width: 0.5, dash: [8, 2, 0.5, 2] },
  /** A chalk line snapped beside the first two. */
  furtherChalk: { width: 0.25, dash: [8, 2, 0.5, 2] },
  /** The line from place to place that a pattern follows; it is not snapped. */
  sight: { width: 0.25, dash: [1, 1] },
  /** Where two planes of a floor that falls to a drain meet. */
  fold: { width: 0.25, dash: [4, 1] },
  movement: { width: 0.35 },
  /** A joint through the field that takes sealant. */
  softJoint: { width: 1.4 },
  seam: { width: 1, dash: [0, 2.2], cap: 'round' },
  dimension: { width: 0.18 },
  slash: { width: 0.35 },
  leader: { width: 0.18 },
  waste: { width: 0.5 },
  thin: { width: 0.25 },
  thick: { width: 0.7 },
  box: { width: 0.5 },
} as const satisfies Record<string, LineStyle>;

export type LineName = keyof typeof lineStyles;
