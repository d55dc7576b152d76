import { type Box, boxOf, grow, overlap, segmentMeets, within } from './boxes.ts';
import { inRings, segmentsCross } from './inRings.ts';
import type { Mark, Spot } from './Mark.ts';
import { type Block, block, blockBox, type NameRequest } from './nameBlock.ts';
import { leader } from './signs.ts';
import { sizes } from './text.ts';

/** What names may use: the paper, the outline they are led out over, and what is already there. */
export interface NameGround {
  readonly paper: Box;
  readonly outline: readonly Spot[];
  /** Rings inside the outline where no tile lies: a name may be led into them. */
  readonly bare?: readonly (readonly Spot[])[];
  readonly taken: readonly Box[];
  /** Whether names that don't fit in their pieces are led out of the room; default true. */
  readonly leads?: boolean;
}

export interface PlacedNames {
  readonly marks: readonly Mark[];
  /** Names that found no place, in the order asked for. */
  readonly unplaced: readonly string[];
}

/** A name keeps this far off the edges of its piece and off other names, in mm. */
const inside = 0.3;
const apart = 1;
/** Names that are led out stand this far outside the outline, on a grid this fine. */
const outside = 2;
const grid = 2;
/** A leader longer than this is not followed by an eye. */
const longest = 40;

const nameSizes = [sizes.name, 9, sizes.smallest];

interface State {
  readonly taken: Box[];
  readonly leaders: (readonly [Spot, Spot])[];
  readonly marks: Mark[];
}

function fits(box: Box, rings: readonly (readonly Spot[])[], taken: readonly Box[]): boolean {
  if (taken.some((other) => overlap(box, other, apart))) return false;
  const roomy = grow(box, inside);
  const centre: Spot = [(box.left + box.right) / 2, (box.bottom + box.top) / 2];
  const free = rings.every((ring) =>
    ring.every((a, i) => !segmentMeets(a, ring[(i + 1) % ring.length]!, roomy)),
  );
  return free && inRings(centre, rings);
}

const steps = [1, 2, 3, 4, 5, 6, 7];

/** Whether a piece is an upright rectangle on the paper, as most are. */
function isUpright(rings: NameRequest['rings']): boolean {
  const [ring] = rings;
  return (
    rings.length === 1 &&
    ring!.length === 4 &&
    ring!.every(([x, y], i) => {
      const [nextX, nextY] = ring![(i + 1) % 4]!;
      return Math.abs(x - nextX) < 0.05 || Math.abs(y - nextY) < 0.05;
    })
  );
}

/** Places to try: the middle of a rectangle or the deepest spot of another piece, then a grid, nearest to it first. */
function spotsIn({ pole, rings }: NameRequest, box: Box, crowded: boolean): readonly Spot[] {
  const upright = isUpright(rings);
  const first: Spot = upright ? [(box.left + box.right) / 2, (box.bottom + box.top) / 2] : pole;
  if (upright && !crowded) return [first];
  const spots = steps.flatMap((i) =>
    steps.map(
      (j): Spot => [
        box.left + ((box.right - box.left) * i) / 8,
        box.bottom + ((box.top - box.bottom) * j) / 8,
      ],
    ),
  );
  return [first, ...spots.sort((a, b) => distance(a, first) - distance(b, first))];
}

const distance = (a: Spot, b: Spot): number => Math.hypot(a[0] - b[0], a[1] - b[1]);

/** Large before small, straight before turned, beside before stacked; without its number where both don't fit. */
function blocksOf(request: NameRequest): readonly Block[] {
  const set = (asked: NameRequest) =>
    nameSizes.flatMap((size) =>
      ([0, 90] as const).flatMap((turn) =>
        (asked.number === undefined ? [false] : [false, true]).map((stacked) =>
          block(asked, size, turn, stacked),
        ),
      ),
    );
  return request.number === undefined
    ? set(request)
    : [...set(request), ...set({ ...request, number: undefined })];
}

function placeInside(request: NameRequest, state: State): boolean {
  if (request.rings.length === 0) return false;
  const piece = boxOf(request.rings[0]!);
  const near = state.taken.filter((other) => overlap(piece, other, apart));
  const spots = spotsIn(request, piece, near.length > 0);
  for (const one of blocksOf(request)) {
    if (one.width > piece.right - piece.left || one.height > piece.top - piece.bottom) continue;
    const spot = spots.find((at) => fits(blockBox(one, at), request.rings, near));
    if (!spot) continue;
    state.taken.push(blockBox(one, spot));
    state.marks.push(...one.draw(spot));
    return true;
  }
  return false;
}

/** Free spots where no tile lies, as a grid over the paper. */
function spotsOutside({ paper, outline, bare = [] }: NameGround): readonly Spot[] {
  const columns = Math.floor((paper.right - paper.left) / grid);
  const rows = Math.floor((paper.top - paper.bottom) / grid);
  return Array.from(
    { length: columns * rows },
    (_, i): Spot => [
      paper.left + ((i % columns) + 0.5) * grid,
      paper.bottom + (Math.floor(i / columns) + 0.5) * grid,
    ],
  ).filter((spot) => !inRings(spot, [outline]) || inRings(spot, bare));
}

const nearestOn = ([x, y]: Spot, box: Box): Spot => [
  Math.min(Math.max(x, box.left), box.right),
  Math.min(Math.max(y, box.bottom), box.top),
];

function isFree(box: Box, from: Spot, ground: NameGround, state: State): boolean {
  const { outline, paper, bare = [] } = ground;
  const roomy = grow(box, outside);
  if (!within(box, paper) || state.taken.some((other) => overlap(box, other, apart))) return false;
  const meets = (ring: readonly Spot[]) =>
    ring.some((a, i) => segmentMeets(a, ring[(i + 1) % ring.length]!, roomy));
  if (meets(outline) || bare.some(meets)) return false;
  const to = nearestOn(from, box);
  return (
    !state.taken.some((other) => segmentMeets(from, to, grow(other, 0.3))) &&
    !state.leaders.some(([a, b]) => segmentMeets(a, b, grow(box, 0.5)) || segmentsCross(a, b, from, to))
  );
}

function leadOut(request: NameRequest, ground: NameGround, spots: readonly Spot[], state: State): boolean {
  const near = spots
    .map((at) => ({ at, far: distance(at, request.pole) }))
    .filter(({ far }) => far <= longest)
    .sort((a, b) => a.far - b.far)
    .map(({ at }) => at);
  const level = block(request, sizes.smallest, 0, false);
  const upright = block(request, sizes.smallest, 90, false);
  const free = (one: Block) => near.find((at) => isFree(blockBox(one, at), request.pole, ground, state));
  const beside = free(level);
  const [one, spot] = beside ? [level, beside] : [upright, free(upright)];
  if (!spot) return false;
  const box = blockBox(one, spot);
  const end = nearestOn(request.pole, grow(box, 0.4));
  state.taken.push(box);
  state.leaders.push([request.pole, end]);
  state.marks.push(...leader(request.pole, end), ...one.draw(spot));
  return true;
}

/** More leaders than this make a plan that nobody can read. */
const mostLed = 60;

/**
 * Puts every name where it can be read: inside its piece at 10 down to 8 points, straight or turned, and where none of
 * these fits, where no tile lies on a leader. No two names overlap, and no leader crosses a name or another leader.
 */
export function placeNames(requests: readonly NameRequest[], ground: NameGround): PlacedNames {
  const state: State = { taken: [...ground.taken], leaders: [], marks: [] };
  const left = requests.filter((request) => !placeInside(request, state));
  const spots = left.length > 0 && ground.leads !== false ? spotsOutside(ground) : [];
  const nearEdge = [...left].sort((a, b) => depth(a, ground) - depth(b, ground));
  const led = nearEdge.slice(0, mostLed).filter((request) => leadOut(request, ground, spots, state));
  return {
    marks: state.marks,
    unplaced: left.filter((request) => !led.includes(request)).map(({ name }) => name),
  };
}

/** The names that don't fit inside their pieces. */
export function notInside(requests: readonly NameRequest[], ground: NameGround): readonly string[] {
  const state: State = { taken: [...ground.taken], leaders: [], marks: [] };
  return requests.filter((request) => !placeInside(request, state)).map(({ name }) => name);
}

/** How far a piece lies from the edge of the paper: the outermost are led out first. */
function depth({ pole: [x, y] }: NameRequest, { paper }: NameGround): number {
  return Math.min(x - paper.left, paper.right - x, y - paper.bottom, paper.top - y);
}
