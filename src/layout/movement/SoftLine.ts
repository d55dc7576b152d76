import type { Ring } from '../../geometry/index.ts';
import type { Ticks } from '../../measure/index.ts';
import type { MovementLine } from './Movement.ts';

/** A soft joint that parts what it crosses: where its middle lies in the pattern's frame, and how wide it is, in ticks. */
export type SoftLine = Pick<MovementLine, 'axis' | 'at' | 'width'>;

/** Past any floor. */
const FAR: Ticks = 20_000_000;

/** From where to where it reaches on its axis: one of an odd width has a tick more on its high side. */
export function softReach({ at, width }: SoftLine): readonly [Ticks, Ticks] {
  const low = at - Math.floor(width / 2);
  return [low, low + width];
}

/** The strip that it takes of the floor, past its ends; drawn in on both sides where `give` is said, for the low one and the high. */
export function softStrip(line: SoftLine, [lowGive, highGive]: readonly [Ticks, Ticks] = [0, 0]): Ring {
  const reach = softReach(line);
  const [low, high] = [reach[0] + lowGive, reach[1] - highGive];
  if (line.axis === 'along')
    return [
      [low, -FAR],
      [high, -FAR],
      [high, FAR],
      [low, FAR],
    ];
  return [
    [-FAR, low],
    [FAR, low],
    [FAR, high],
    [-FAR, high],
  ];
}
