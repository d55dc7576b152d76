import { type Point, unitAlong } from '../../geometry/index.ts';
import type { TileSpec } from '../../job/Job.ts';
import type { Ticks } from '../../measure/index.ts';
import type { Ground } from '../frame/Ground.ts';
import { type SoftLine, softReach } from '../movement/SoftLine.ts';
import { CLEAR } from './courseRegion.ts';
import { type LaidStrip, laidFrom, layCourse, leastOf, type StripLine } from './layCourse.ts';
import { type GroundPart, partGround, softThrough, withSoftFaces } from './partGround.ts';

/** A tile as it is laid along a line. */
type Strip = Pick<TileSpec, 'length' | 'width'>;

/** Places of the tiles of one bay are so far from those of the next. */
const APART = 10_000;
/** Rounding of two soft joints. */
const ROUNDING: Ticks = 2;

/**
 * Lays tiles along a line bay by bay between the soft joints that run through: a tile begins or ends at one, where that leaves no piece
 * too thin; between two of them where whole tiles fill the bay. Else the bay is laid from its own middle and its tiles are cut there.
 */
export function layParted(
  ground: Ground,
  line: StripLine,
  tile: Strip,
  joint: Ticks,
  lines: readonly SoftLine[],
): LaidStrip {
  const through = softThrough(ground.frame.field, lines);
  if (through.length === 0) return layCourse(ground, line, tile, joint);
  const known = withSoftFaces(ground, through);
  const crossings = through.map((one) => crossingOf(one, line, line.rows * (tile.width + joint) - joint));
  const bays = partGround(known, through)
    .map((part) => bayOf(part, crossings, line))
    .sort((one, other) => one.line.span[0] - other.line.span[0]);
  const laid = bays.map((bay) => layBay(known, bay, { tile, joint, through }));
  return {
    ground: known,
    turn: laid[0]!.turn,
    pieces: laid.flatMap(({ pieces }, bay) => pieces.map((piece) => placed(piece, bay))),
    left: laid.flatMap(({ left }, bay) => left.map((part) => placed(part, bay))),
  };
}

function placed<Part extends LaidStrip['left'][number] | LaidStrip['pieces'][number]>(
  part: Part,
  bay: number,
): Part {
  return { ...part, place: { ...part.place, i: part.place.i + bay * APART } };
}

/** Where a soft joint crosses a strip, along its line: the least and the most place of each of its sides, and whether the line rises there. */
interface Crossing {
  readonly low: readonly [number, number];
  readonly high: readonly [number, number];
  readonly rises: boolean;
}

/** A soft joint that runs more along a strip than across it bounds none of its ends. */
const ACROSS = 0.5;

function crossingOf(soft: SoftLine, { from, to }: StripLine, depth: Ticks): Crossing | undefined {
  const axis = soft.axis === 'along' ? 0 : 1;
  const along = unitAlong(from, to);
  const outward: Point = [along[1], -along[0]];
  if (Math.abs(along[axis]) < ACROSS) return undefined;
  const rises = along[axis] > 0;
  const reach = softReach(soft);
  const [low, high] = (rises ? reach : [reach[1], reach[0]]).map((at) => {
    const ends = [0, depth].map((off) => (at - from[axis] - outward[axis] * off) / along[axis]);
    return [Math.min(...ends), Math.max(...ends)] as const;
  });
  return { low: low!, high: high!, rises };
}

/** A soft joint that a strip meets, by its place in the list. */
interface Met {
  readonly at: number;
  readonly crossing: Crossing;
}

/** A bay of a strip: its part of the ground and of the line, and which soft joints bound its ends. */
interface BayOfStrip extends GroundPart {
  readonly line: StripLine;
  readonly begin?: Met;
  readonly end?: Met;
}

function bayOf(part: GroundPart, crossings: readonly (Crossing | undefined)[], line: StripLine): BayOfStrip {
  const met = crossings.flatMap((crossing, at) => (crossing ? [{ at, crossing }] : []));
  const isBehind = ({ at, crossing }: Met) => (part.sides[at] === 1) === crossing.rises;
  const begin = met
    .filter(isBehind)
    .reduce<Met | undefined>((best, one) => (best && endOf(best) > endOf(one) ? best : one), undefined);
  const end = met
    .filter((one) => !isBehind(one))
    .reduce<Met | undefined>((best, one) => (best && endOf(best) < endOf(one) ? best : one), undefined);
  const { reach, span } = line;
  return {
    ...part,
    line: {
      ...line,
      reach: [
        begin ? Math.floor(begin.crossing.high[0]) : reach[0],
        end ? Math.ceil(end.crossing.low[1]) : reach[1],
      ],
      span: [begin ? middleOf(begin.crossing.high) : span[0], end ? middleOf(end.crossing.low) : span[1]],
    },
    ...(begin && { begin }),
    ...(end && { end }),
  };
}

const middleOf = ([least, most]: readonly [number, number]) => (least + most) / 2;
const endOf = ({ crossing }: Met) => middleOf(crossing.high);

interface Laying {
  readonly tile: Strip;
  readonly joint: Ticks;
  readonly through: readonly SoftLine[];
}

function layBay(ground: Ground, bay: BayOfStrip, { tile, joint, through }: Laying): LaidStrip {
  const start = flushStart(bay, { tile, joint, through }, ground.flat);
  if (start === undefined) return layCourse(bay.ground, bay.line, tile, joint);
  const gives = through.map((_, at): readonly [Ticks, Ticks] => {
    const crossing = [bay.begin, bay.end].find((one) => one?.at === at)?.crossing;
    const give = crossing ? Math.ceil(leanOf(crossing)) + CLEAR : 0;
    return bay.sides[at] === 0 ? [give, 0] : [0, give];
  });
  const own = partGround(ground, through, gives).find(({ sides }) => `${sides}` === `${bay.sides}`)!;
  const laid = laidFrom(own.ground, bay.line, tile, joint, start);
  const isThin = leastOf(laid, bay.line) < ground.minStrip;
  return isThin ? layCourse(bay.ground, bay.line, tile, joint) : laid;
}

/** How far a soft joint leans across a strip. */
function leanOf({ low: [least, most] }: Crossing): number {
  return most - least;
}

/** Where a tile begins if one stands at the soft joint of each end that has one; undefined where a joint leans so far that it would be sawn, or whole tiles do not fill the bay. */
function flushStart({ begin, end }: BayOfStrip, { tile, joint }: Laying, flat: Ticks): Ticks | undefined {
  const ends = [begin, end].flatMap((one) => one?.crossing ?? []);
  if (ends.some((one) => leanOf(one) > flat || leanOf(one) + CLEAR >= joint)) return undefined;
  const first = begin && Math.ceil(begin.crossing.high[1]);
  const last = end && Math.floor(end.crossing.low[0]) - tile.length;
  if (first === undefined || last === undefined) return first ?? last;
  const module = tile.length + joint;
  const over = last - first - Math.round((last - first) / module) * module;
  return over >= -ROUNDING && over <= flat ? first : undefined;
}
