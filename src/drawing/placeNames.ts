import { type Box, boxOf, overlap, segmentMeets, within } from './boxes.ts';
import { boxIndex } from './boxIndex.ts';
import { inRings } from './inRings.ts';
import { type LeaderGround, type Led, leaderOf, ledBlocks, lengthMm } from './leaders.ts';
import type { Mark, Spot } from './Mark.ts';
import { type Block, block, blockBox, type NameRequest } from './nameBlock.ts';
import { alongAny } from './runsAlong.ts';
import { outsideOf, spotsOutside, standsOutside } from './spotsOutside.ts';
import { sizes } from './text.ts';
import { untangled } from './untangled.ts';

/** What names may use: the paper, the outline they are led out over, and what is already there. */
export interface NameGround {
  readonly paper: Box;
  readonly outline: readonly Spot[];
  /** Rings inside the outline where no tile lies: a name may be led into them. */
  readonly bare?: readonly (readonly Spot[])[];
  readonly taken: readonly Box[];
  /** Walls, joints, chalk and other lines: a leader that runs along one is taken for it. */
  readonly lines?: readonly (readonly [Spot, Spot])[];
  /** Whether names that don't fit in their pieces are led out of the room; default true. */
  readonly leads?: boolean;
  /** Names that come first, in this order, and are led out all the same, at need over pieces that have no words there. */
  readonly must?: ReadonlySet<string>;
}

export interface PlacedNames {
  readonly marks: readonly Mark[];
  /** Names that found no place, in the order asked for. */
  readonly unplaced: readonly string[];
  /** Names that stand in their pieces without the number of their cut, for which there is no room. */
  readonly unnumbered: readonly string[];
  /** Names that are led out of their pieces so far that an eye loses them among others. */
  readonly ledFar: readonly string[];
}

/** A name keeps this far off the edges of its piece and off other names, in mm. */
const inside = 0.3;
const apart = 1;
/** A leader longer than this is not followed by an eye. */
const longest = 40;
/** One longer than this is followed, but not at a glance. */
const far = 12;

const nameSizes = [sizes.name, 9, sizes.smallest];

interface State {
  readonly taken: Box[];
  readonly marks: Mark[];
  readonly unnumbered: string[];
}

const begun = (taken: readonly Box[]): State => ({
  taken: [...taken],
  marks: [],
  unnumbered: [],
});

function fits(box: Box, rings: readonly (readonly Spot[])[], taken: readonly Box[]): boolean {
  if (taken.some((other) => overlap(box, other, apart))) return false;
  const centre: Spot = [(box.left + box.right) / 2, (box.bottom + box.top) / 2];
  const free = rings.every((ring) =>
    ring.every((a, i) => !segmentMeets(a, ring[(i + 1) % ring.length]!, box, inside)),
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

/** A grid of places in a box, nearest to a spot first. */
function spotsNear(box: Box, first: Spot): readonly Spot[] {
  const spots = steps.flatMap((i) =>
    steps.map(
      (j): Spot => [
        box.left + ((box.right - box.left) * i) / 8,
        box.bottom + ((box.top - box.bottom) * j) / 8,
      ],
    ),
  );
  return spots.sort((a, b) => distance(a, first) - distance(b, first));
}

/** Finds a place: the middle of a rectangle or the deepest spot of another piece, else on a grid, nearest to it first. */
function spotFinder({ pole, rings }: NameRequest, box: Box, crowded: boolean) {
  const upright = isUpright(rings);
  const first: Spot = upright ? [(box.left + box.right) / 2, (box.bottom + box.top) / 2] : pole;
  // Most names stand at the first place, and those of small pieces ask for the others at every size.
  let others: readonly Spot[] | undefined;
  return (isGood: (at: Spot) => boolean): Spot | undefined => {
    if (isGood(first)) return first;
    if (upright && !crowded) return undefined;
    others ??= spotsNear(box, first);
    return others.find(isGood);
  };
}

const distance = (a: Spot, b: Spot): number => Math.hypot(a[0] - b[0], a[1] - b[1]);

/** Large before small, straight before turned, beside before stacked; without its number where both don't fit. */
function* blocksOf(request: NameRequest): Generator<Block> {
  for (const size of nameSizes)
    for (const turn of [0, 90] as const)
      for (const stacked of request.number === undefined ? [false] : [false, true])
        yield block(request, size, turn, stacked);
  if (request.number !== undefined) yield* blocksOf({ ...request, number: undefined });
}

function placeInside(request: NameRequest, state: State): boolean {
  if (request.rings.length === 0) return false;
  const piece = boxOf(request.rings[0]!);
  const near = state.taken.filter((other) => overlap(piece, other, apart));
  const find = spotFinder(request, piece, near.length > 0);
  for (const one of blocksOf(request)) {
    if (one.width > piece.right - piece.left || one.height > piece.top - piece.bottom) continue;
    const spot = find((at) => fits(blockBox(one, at), request.rings, near));
    if (!spot) continue;
    state.taken.push(blockBox(one, spot));
    state.marks.push(...one.draw(spot));
    if (request.number !== undefined && !one.numbered) state.unnumbered.push(request.name);
    return true;
  }
  return false;
}

/** More leaders than this make a plan that nobody can read. */
const mostLed = 60;

/**
 * Puts every name where it can be read: inside its piece at 10 down to 8 points, straight or turned, and where none of
 * these fits, where no tile lies on a leader. No two names overlap, and no leader crosses a name or another leader.
 */
export function placeNames(requests: readonly NameRequest[], ground: NameGround): PlacedNames {
  const state = begun(ground.taken);
  const isMust = ({ name }: NameRequest) => ground.must?.has(name) ?? false;
  const first = [...(ground.must ?? [])].flatMap((name) => requests.filter((one) => one.name === name));
  const inOrder = [...first, ...requests.filter((request) => !isMust(request))];
  const left = inOrder.filter((request) => !placeInside(request, state));
  const wanted = ground.leads === false ? left.filter(isMust) : left;
  const led = [...leadAllOut(wanted, isMust, ground, state)];
  const isLed = (request: NameRequest) => led.some((one) => one.request === request);
  const taken = boxIndex(state.taken);
  const isAlong = alongAny(ground.lines ?? []);
  for (const request of left.filter((one) => isMust(one) && !isLed(one))) {
    const over = leaderOver(request, ground, { taken, dots: [], isAlong, close: true })(led);
    if (over) led.push(over);
  }
  return {
    marks: [...state.marks, ...led.flatMap(({ marks }) => marks)],
    unplaced: requests.filter((one) => left.includes(one) && !isLed(one)).map(({ name }) => name),
    unnumbered: state.unnumbered,
    ledFar: led.filter(({ line }) => lengthMm(line) > far).map(({ request }) => request.name),
  };
}

/** Leads names out, those that must be first, then those of the outermost pieces, and gives those that found a place. */
function leadAllOut(
  left: readonly NameRequest[],
  isFirst: (request: NameRequest) => boolean,
  ground: NameGround,
  state: State,
): readonly Led[] {
  const rank = (request: NameRequest) => (isFirst(request) ? -Infinity : depth(request, ground));
  const nearEdge = [...left].sort((a, b) => rank(a) - rank(b) || 0).slice(0, mostLed);
  const least = Math.min(...nearEdge.flatMap(ledBlocks).map(({ width, height }) => Math.min(width, height)));
  const where = outsideOf(ground.paper, ground.outline, ground.bare);
  const taken = boxIndex(state.taken);
  const near = spotsOutside(where, taken, least, longest);
  const own = {
    taken,
    dots: nearEdge.map(({ pole }) => pole),
    isAlong: alongAny(ground.lines ?? []),
    stands: (box: Box) => standsOutside(box, where),
  };
  const outside = new Map(nearEdge.map((request) => [request, leaderOf(request, near(request.pole), own)]));
  const known = new Map<NameRequest, ReturnType<typeof leaderOver>>();
  const over = (request: NameRequest) => {
    const finds = known.get(request) ?? leaderOver(request, ground, own);
    known.set(request, finds);
    return finds;
  };
  return untangled(
    nearEdge,
    (request, led) => outside.get(request)?.(led) ?? (isFirst(request) ? over(request)(led) : undefined),
  );
}

/** Where a name may stand from its spot, the nearest first. */
const offs = Array.from({ length: 2 * longest + 1 }, (_, i) => i - longest);
const away = offs
  .flatMap((dx) => offs.map((dy): Spot => [dx, dy]))
  .filter((spot) => Math.hypot(...spot) <= longest)
  .sort((a, b) => Math.hypot(...a) - Math.hypot(...b));

/** Leads a name over pieces near its own, where no words stand. */
function leaderOver(request: NameRequest, { paper }: NameGround, own: Omit<LeaderGround, 'stands'>) {
  const { pole } = request;
  const spots = away.map(([dx, dy]): Spot => [pole[0] + dx, pole[1] + dy]);
  const clear = request.rings.flatMap((ring) => (ring.length > 0 ? [boxOf(ring)] : []));
  const stands = (box: Box) => within(box, paper) && !clear.some((ring) => overlap(box, ring, 0.8));
  return leaderOf(request, spots, { ...own, stands });
}

/** The names that don't fit inside their pieces. */
export function notInside(requests: readonly NameRequest[], ground: NameGround): readonly string[] {
  const state = begun(ground.taken);
  return requests.filter((request) => !placeInside(request, state)).map(({ name }) => name);
}

/** How far a piece lies from the edge of the paper: the outermost are led out first. */
function depth({ pole: [x, y] }: NameRequest, { paper }: NameGround): number {
  return Math.min(x - paper.left, paper.right - x, y - paper.bottom, paper.top - y);
}
