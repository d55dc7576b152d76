import { distancePointSegment, distanceSegments, type Point } from '../geometry/index.ts';
import { type Box, boxOf, grow, overlap, segmentMeets } from './boxes.ts';
import type { BoxIndex } from './boxIndex.ts';
import { kept } from './kept.ts';
import type { Mark, Spot } from './Mark.ts';
import { type Block, block, blockBox, type NameRequest } from './nameBlock.ts';
import { leader } from './signs.ts';
import { clipSegment } from './template/clipSegment.ts';
import { sizes } from './text.ts';

/** A name that is led out of its piece: where it stands, and the line to it from its piece's dot. */
export interface Led {
  readonly request: NameRequest;
  readonly box: Box;
  readonly line: readonly [Spot, Spot];
  /** The box round both. */
  readonly round: Box;
  readonly marks: readonly Mark[];
}

/** What leaders and their names stay clear of, whatever else is led out. */
export interface LeaderGround {
  readonly taken: BoxIndex;
  /** Dots of all names that are to be led out: a line over another's dot is taken for its own. */
  readonly dots: readonly Spot[];
  /** Whether a leader runs along a line that it would be taken for. */
  readonly isAlong: (line: Led['line']) => boolean;
  /** Where a name may stand. */
  readonly stands: (box: Box) => boolean;
  /** Whether a leader may pass as near as can just be seen, for a name that must be led out; default no. */
  readonly close?: boolean;
}

/** A place for a name, with the line to it. */
interface Place {
  readonly at: Spot;
  readonly box: Box;
  readonly line: Led['line'];
  readonly round: Box;
}

/** A name keeps this far off others, a leader off what is written, its end off all names but its own, a leader off other leaders and their dots, in mm. */
interface Apart {
  readonly names: number;
  readonly past: number;
  readonly end: number;
  readonly leaders: number;
  readonly dots: number;
}
const roomy: Apart = { names: 1, past: 0.65, end: 1.3, leaders: 1, dots: 1 };
const close: Apart = { names: 0.6, past: 0.3, end: 0.5, leaders: 0.4, dots: 0 };

/** A leader ends this far off its name, and aims this far into it, so that it does not end at a corner between two names, in mm. */
const ends = { off: 0.3, into: 2 } as const;
/** A name that reads level is worth a leader that is so much longer, in mm. */
const levelWorth = 14;

export const lengthMm = ([a, b]: Led['line']): number => Math.hypot(a[0] - b[0], a[1] - b[1]);
const between = ([a, b]: Led['line'], [c, d]: Led['line']) =>
  distanceSegments(a as Point, b as Point, c as Point, d as Point);

const nearestOn = ([x, y]: Spot, box: Box): Spot => [
  Math.min(Math.max(x, box.left), box.right),
  Math.min(Math.max(y, box.bottom), box.top),
];

/** A box drawn in by a length on each side, at most to its middle. */
function core({ left, bottom, right, top }: Box): Box {
  const [across, up] = [Math.min(ends.into, (right - left) / 2), Math.min(ends.into, (top - bottom) / 2)];
  return { left: left + across, bottom: bottom + up, right: right - across, top: top - up };
}

/** From a dot towards the inside of a name's box, as far as its edge. */
export function lineTo(dot: Spot, box: Box): Led['line'] {
  const aim = nearestOn(dot, core(box));
  return [dot, clipSegment(dot, aim, grow(box, ends.off))?.[0] ?? aim];
}

const isOff = ({ box, line }: Place, other: Box, apart: Apart): boolean =>
  !overlap(box, other, apart.names) && isPassed(line, other, apart);

const isPassed = (line: Led['line'], other: Box, { past, end }: Apart): boolean =>
  !segmentMeets(...line, other, past) && !segmentMeets(line[1], line[1], other, end);

function boxRound(box: Box, [from, to]: Led['line']): Box {
  return boxOf([[box.left, box.bottom], [box.right, box.top], from, to]); // biome-ignore format: corners and ends on a line
}

/** Whether a place is clear of what is led out already. */
const isClear = (place: Place, led: readonly Led[], apart: Apart): boolean =>
  led.every(
    (other) =>
      !overlap(place.round, other.round, apart.end) ||
      (isOff(place, other.box, apart) &&
        !segmentMeets(...place.line, other.box, apart.end) &&
        !segmentMeets(...other.line, place.box, apart.end) &&
        between(place.line, other.line) >= apart.leaders),
  );

/** Whether a leader passes a dot well; one that begins as near to it can't help it. */
function isPast(line: Led['line'], dot: Spot, least: number): boolean {
  const off = Math.min(least, Math.hypot(dot[0] - line[0][0], dot[1] - line[0][1]));
  return distancePointSegment(dot as Point, line[0] as Point, line[1] as Point) >= off - 1e-6;
}

const apartOn = (ground: LeaderGround): Apart => (ground.close ? close : roomy);

/** A name that is led out: level, or upright. */
export const ledBlocks = (request: NameRequest) =>
  [block(request, sizes.smallest, 0, false), block(request, sizes.smallest, 90, false)] as const;

/** Places of a name set in one way, the nearest first, clear of all but other names that are led out. */
function* placesOf(one: Block, pole: Spot, near: readonly Spot[], ground: LeaderGround): Generator<Place> {
  const { taken, dots, isAlong, stands } = ground;
  const apart = apartOn(ground);
  for (const at of near) {
    const box = blockBox(one, at);
    // Most places fail here, and a plan has tens of thousands.
    if (taken.some(grow(box, apart.names), (other) => overlap(box, other, apart.names))) continue;
    const line = lineTo(pole, box);
    const beside = grow(boxOf(line), Math.max(apart.past, apart.end));
    const isGood =
      !taken.some(beside, (other) => !isPassed(line, other, apart)) &&
      dots.every((dot) => isPast(line, dot, apart.dots)) &&
      stands(box) &&
      !isAlong(line);
    if (isGood) yield { at, box, line, round: boxRound(box, line) };
  }
}

/**
 * Gives what finds a name's place among others that are led out: the nearest free one of the places near its spot, level as a rule, and upright
 * where that spares a long leader; undefined where none is free.
 */
export function leaderOf(
  request: NameRequest,
  near: readonly Spot[],
  ground: LeaderGround,
): (led: readonly Led[]) => Led | undefined {
  const own = { ...ground, dots: ground.dots.filter((dot) => dot !== request.pole) };
  const [level, upright] = ledBlocks(request).map((one) => {
    const places = kept(placesOf(one, request.pole, near, own));
    return (led: readonly Led[]): Led | undefined => {
      for (const place of places())
        if (isClear(place, led, apartOn(ground))) {
          const { at, ...stood } = place;
          return { request, ...stood, marks: [...leader(...place.line), ...one.draw(at)] };
        }
      return undefined;
    };
  });
  return (led) => {
    const beside = level!(led);
    if (beside && lengthMm(beside.line) <= levelWorth) return beside;
    const turned = upright!(led);
    if (!beside || !turned) return beside ?? turned;
    return lengthMm(beside.line) <= lengthMm(turned.line) + levelWorth ? beside : turned;
  };
}
