/** How a run between two walls is balanced, in the words of a tape. Checked along; the other way is one tile. */
export interface BalanceCase {
  readonly name: string;
  readonly wall: string;
  readonly tile: string;
  readonly joint: string;
  readonly gap: string;
  readonly full: number;
  readonly end: string;
  readonly middle: 'joint' | 'tile';
  readonly source: string;
}

const none = 'common practice, no source';

export const balanceCases: readonly BalanceCase[] = [
  {
    name: 'nine full tiles and two of 7 21/32',
    wall: '124 in',
    tile: '11 13/16 in',
    joint: '3/16 in',
    gap: '1/4 in',
    full: 9,
    end: '7 21/32 in',
    middle: 'tile',
    source: 'geometry',
  },
  {
    name: 'the half-tile rule with joints',
    wall: '100 in',
    tile: '4 1/4 in',
    joint: '1/8 in',
    gap: '0 in',
    full: 21,
    end: '4 in',
    middle: 'tile',
    source: none,
  },
  {
    name: 'an even number of full tiles in millimetres',
    wall: '1364 mm',
    tile: '250 mm',
    joint: '2 mm',
    gap: '2 mm',
    full: 4,
    end: '175 mm',
    middle: 'joint',
    source: none,
  },
  {
    name: 'an odd number of full tiles in millimetres',
    wall: '1188 mm',
    tile: '250 mm',
    joint: '2 mm',
    gap: '2 mm',
    full: 3,
    end: '213 mm',
    middle: 'tile',
    source: none,
  },
  {
    name: 'the long way of a room of 15 ft 10 in',
    wall: '190 in',
    tile: '11 13/16 in',
    joint: '3/16 in',
    gap: '1/4 in',
    full: 14,
    end: '10 21/32 in',
    middle: 'joint',
    source: none,
  },
  {
    name: 'a printed example that gives 115 mm, which does not add up',
    wall: '2630 mm',
    tile: '300 mm',
    joint: '0 mm',
    gap: '0 mm',
    full: 7,
    end: '265 mm',
    middle: 'tile',
    source: 'an Australian public floor-covering course, unit 4, put right',
  },
  {
    name: 'its exercise',
    wall: '3540 mm',
    tile: '300 mm',
    joint: '0 mm',
    gap: '0 mm',
    full: 10,
    end: '270 mm',
    middle: 'joint',
    source: 'an Australian public floor-covering course, unit 4',
  },
  {
    name: 'a printed example that gives 9 in borders, which does not add up',
    wall: '176 in',
    tile: '12 in',
    joint: '0 in',
    gap: '0 in',
    full: 13,
    end: '10 in',
    middle: 'tile',
    source: 'a public how-to article, put right',
  },
];
