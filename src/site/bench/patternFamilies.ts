/** A family of patterns: its tiles by key, each by its size, and the pattern, as a job file has them. */
export interface PatternFamily {
  readonly tiles: Readonly<Record<string, string>>;
  readonly pattern: string;
}

/** Families of patterns whose proofs the bench tells, by name. */
export const patternFamilies: Readonly<Record<string, PatternFamily>> = {
  straight: { tiles: { field: 'read: [12 in x 12 in]' }, pattern: 'straight' },
  'half bond': { tiles: { field: 'read: [24 in x 12 in]' }, pattern: '{running: 1/2}' },
  'third plank': { tiles: { field: 'read: [36 in x 6 in]' }, pattern: '{running: 1/3}' },
  diagonal: { tiles: { field: 'read: [12 in x 12 in]' }, pattern: '{straight: {turned: 45}}' },
  herringbone: { tiles: { field: 'read: [17 7/8 in x 5 7/8 in]' }, pattern: '{herringbone: single}' },
  basketweave: { tiles: { field: 'read: [12 1/8 in x 6 in]' }, pattern: 'basketweave' },
  hexagon: { tiles: { field: 'hexagon: {flats: 8 in}' }, pattern: 'hexagon' },
  'two squares': {
    tiles: { large: 'read: [11 7/8 in x 11 7/8 in]', small: 'read: [5 7/8 in x 5 7/8 in]' },
    pattern: 'two squares',
  },
  'four sizes': {
    tiles: {
      largest: 'read: [23 7/8 in x 15 7/8 in]',
      large: 'read: [15 7/8 in x 15 7/8 in]',
      oblong: 'read: [15 7/8 in x 7 7/8 in]',
      small: 'read: [7 7/8 in x 7 7/8 in]',
    },
    pattern: 'four sizes',
  },
  'octagon and dot': {
    tiles: { octagon: 'octagon: {flats: 8 in, corner: 2 in}', dot: 'read: [2 3/4 in x 2 3/4 in]' },
    pattern: 'octagon and dot',
  },
};
