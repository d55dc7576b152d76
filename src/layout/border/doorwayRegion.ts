import type { Point } from '../../geometry/index.ts';
import type { Ticks } from '../../measure/index.ts';
import { makeField } from '../../room/makeField.ts';
import type { RoomEdge } from '../../room/Room.ts';
import type { RoomInFrame } from '../frame/frameRoom.ts';
import type { BorderSide } from './BorderSide.ts';
import { jointFacts } from './courseEnds.ts';
import { CLEAR } from './courseRegion.ts';
import { inTicks, movedLeft, offsetLine } from './offsetLine.ts';

/**
 * The floor of a doorway behind a border that runs straight past it, a room of its own: the recess up to the door line, on the other
 * side the border's outer edge. Null where no tile finds room there.
 */
export function doorwayRegion(
  frame: RoomInFrame,
  side: BorderSide,
  doorway: string,
  joint: Ticks,
): RoomInFrame | null {
  const own = frame.edges.filter(({ name }) => name === doorway);
  const first = frame.edges.indexOf(own[0]!);
  // A doorway whose line lies on the wall's face has no recess.
  if (own.length < 3) return null;
  const inward = (point: Point) => inTicks(movedLeft(point, offsetLine(side, 0).along, side.facts.gap));
  const walked = own.map((_, i) => frame.edges[(first + i) % frame.edges.length]!);
  const [begin, end] = [inward(walked[0]!.from), inward(walked.at(-1)!.to)];
  const recess = walked.map(
    (edge, i): RoomEdge => ({
      ...edge,
      from: i === 0 ? begin : edge.from,
      to: i === walked.length - 1 ? end : edge.to,
    }),
  );
  const mouth: RoomEdge = {
    ...jointFacts(joint - CLEAR),
    id: `border:${side.wall}`,
    name: `border:${side.wall}`,
    from: end,
    to: begin,
  };
  const edges = [...recess, mouth];
  const outline = edges.map(({ from }) => from);
  const field = makeField(outline, edges, frame.obstacles);
  return field.length === 0 ? null : { outline, edges, obstacles: frame.obstacles, field };
}
