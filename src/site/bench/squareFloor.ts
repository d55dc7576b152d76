/** What a floor of the bench is like, in inches. */
export interface SquareFloor {
  readonly tile: number;
  readonly wide: number;
  readonly deep: number;
  readonly turned: number;
  /** Hexagons as far across their flats instead of squares. */
  readonly hexagons?: boolean;
}

/** A job file for a plain rectangle of square or hexagonal tiles, joint 1/8 in. */
export function squareFloor({ tile, wide, deep, turned, hexagons = false }: SquareFloor): string {
  const size = hexagons ? `hexagon: {flats: ${tile} in}` : `read: [${tile} in x ${tile} in]`;
  const pattern = hexagons ? 'hexagon' : `{straight: {turned: ${turned}}}`;
  const [width, depth] = [`{read: ${wide} in}`, `{read: ${deep} in}`];
  return `
title: Bench
owner: Nobody
place: Nowhere
house year: 2001
status: planned
revision: {letter: A, date: 2027-01-04}
print: {paper: letter, units: inches, saw step: 1/16 in, crew: en, owner: en}
work: {from: 2027-01-11, days: mon-fri, hours: 08:00-16:00, pace: 15 sq ft an hour}
tile:
  field:
    {name: Field, ${size}, thick: 3/8 in, edge: rectified, turns: any,
     material: porcelain, box: {pieces: 10}}
joint: 1/8 in
floor:
  walls: {A-B: ${width}, B-C: ${depth}, C-D: ${width}, D-A: ${depth}}
  exposure: dry
  pattern: ${pattern}
  start: {along: best, across: best}
base:
  below: plywood
  new: {mortar under tile: 1/8 in, tile: 3/8 in}
products:
  mortar: {notch: 1/4 in x 3/8 in x 1/4 in, bag: 50 lb, covers: 60-80 sq ft}
  grout: {kind: cement, bag: 10 lb}
  sealer: {kind: penetrating}
`;
}
