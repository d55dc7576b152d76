/** What a start makes of the walls that can be seen; the less the better, but for `narrowest`. Lengths in ticks of wall. */
export interface WallScore {
  /** Length of wall along which strips are thinner than the least. */
  readonly strips: number;
  /** Length of wall times what its cuts lack of half a tile, as a share of it. */
  readonly halves: number;
  /** The narrowest cut as a share of its tile; 1 where nothing is cut. */
  readonly narrowest: number;
}
