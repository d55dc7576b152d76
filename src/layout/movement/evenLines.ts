import type { Ticks } from '../../measure/index.ts';

/** A stretch of floor between two places where it is free to move, the joints inside it, in order, and the longest bay. */
export interface Stretch {
  readonly from: Ticks;
  readonly to: Ticks;
  readonly joints: readonly Ticks[];
  readonly limit: Ticks;
  /** Joints that are better places than others. */
  readonly wanted: ReadonlySet<Ticks>;
  /** Bays at least, as far as there are joints for them; 1 where it is not said. */
  readonly least?: number;
}

/** A bay shorter than this share of an even one is no good, whatever lies at its end. */
const LEAST_SHARE = 1 / 2;

/** What is the less the better, the first figure before the next: bays too short, wanted joints passed by, squares of what bays lack of even. */
type Cost = readonly [short: number, unmet: number, uneven: number];

interface Way {
  readonly cost: Cost;
  /** Which place the one before is. */
  readonly before: number;
}

/**
 * The joints that part a stretch into the fewest bays within the limit; of those the ones with no short bay, then on most
 * wanted joints, then the most even. Undefined where two joints lie farther apart than the limit.
 *
 * @example
 * evenLines({ from: 0, to: 26, joints: [3, 8, 13, 18, 23], limit: 20, wanted: new Set() }) //=> [13]
 * evenLines({ from: 0, to: 26, joints: [3, 8, 13, 18, 23], limit: 20, wanted: new Set([8]) }) //=> [8]
 * evenLines({ from: 0, to: 20, joints: [5, 10, 15], limit: 20, wanted: new Set(), least: 2 }) //=> [10]
 * evenLines({ from: 0, to: 26, joints: [3], limit: 20, wanted: new Set() }) //=> undefined
 */
export function evenLines(stretch: Stretch): readonly Ticks[] | undefined {
  const places = [stretch.from, ...stretch.joints, stretch.to];
  const fewest = fewestBays(places, stretch.limit);
  if (fewest === undefined) return undefined;
  const bays = Math.max(fewest, Math.min(stretch.least ?? 1, stretch.joints.length + 1));
  const even = (stretch.to - stretch.from) / bays;
  const layers: (readonly (Way | undefined)[])[] = [
    places.map((_, i) => (i === 0 ? { cost: [0, 0, 0], before: -1 } : undefined)),
  ];
  for (let bay = 0; bay < bays; bay++) layers.push(nextLayer(layers[bay]!, places, stretch, even));
  const lines: Ticks[] = [];
  for (let bay = bays, at = places.length - 1; bay > 1; bay--) {
    at = layers[bay]![at]!.before;
    lines.unshift(places[at]!);
  }
  return lines;
}

/** From each place as far as the limit lets go. */
function fewestBays(places: readonly Ticks[], limit: Ticks): number | undefined {
  let bays = 0;
  for (let at = 0; at < places.length - 1; bays++) {
    let next = at;
    while (next + 1 < places.length && places[next + 1]! - places[at]! <= limit) next++;
    if (next === at) return undefined;
    at = next;
  }
  return bays;
}

/** The best way to each place with one bay more. */
function nextLayer(
  layer: readonly (Way | undefined)[],
  places: readonly Ticks[],
  { limit, wanted }: Stretch,
  even: number,
): readonly (Way | undefined)[] {
  return places.map((place, i) => {
    let best: Way | undefined;
    for (let before = i - 1; before >= 0 && place - places[before]! <= limit; before--) {
      const way = layer[before];
      if (!way) continue;
      const cost = withBay(way.cost, place - places[before]!, even, wanted.has(place));
      if (!best || less(cost, best.cost)) best = { cost, before };
    }
    return best;
  });
}

function withBay([short, unmet, uneven]: Cost, bay: Ticks, even: number, isWanted: boolean): Cost {
  return [
    short + (bay < even * LEAST_SHARE ? 1 : 0),
    unmet + (isWanted ? 0 : 1),
    uneven + ((bay - even) / even) ** 2,
  ];
}

function less(one: Cost, other: Cost): boolean {
  const differs = one.findIndex((figure, i) => figure !== other[i]);
  return differs >= 0 && one[differs]! < other[differs]!;
}
