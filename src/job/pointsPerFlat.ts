/** Across points a regular hexagon is this many times what it is across flats. */
export const pointsPerFlat = 2 / Math.sqrt(3);
