import { type Point, pointInRing } from '../geometry/index.ts';
import { printLength, type System } from '../measure/index.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import { firstFree } from './firstFree.ts';
import type { Mark, Spot } from './Mark.ts';
import { type Scale, toPaper } from './Scale.ts';
import { angleTo, move } from './signs.ts';
import type { Taken } from './takenBy.ts';
import { path, text } from './text.ts';

/** Corners of the check triangle in the quarter where it lies in the room; the first leg along the frame's x. */
function triangle(surface: PacketSurface): readonly [Point, Point, Point] {
  const { crossing, check } = surface.chalk;
  const [x, y] = crossing;
  const quarters = [[1, 1], [-1, 1], [-1, -1], [1, -1]] as const; // biome-ignore format: four quarters on a line
  const corners = quarters.map(([sx, sy]): readonly [Point, Point, Point] => [
    [x + sx * check.legs[0], y],
    crossing,
    [x, y + sy * check.legs[1]],
  ]);
  const clear = ([a, , b]: readonly [Point, Point, Point]) => {
    const middle: Point = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
    return [a, b, middle].every(
      (point) =>
        pointInRing(point, surface.outline) &&
        !surface.obstacles.some(({ ring }) => pointInRing(point, ring)),
    );
  };
  return corners.find(clear) ?? corners[0]!;
}

const between = (a: Spot, b: Spot): Spot => [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];

/** The 3-4-5 check: both legs marked on the chalk lines, the diagonal drawn, each with its length. */
export function threeFourFive(
  surface: PacketSurface,
  scale: Scale,
  system: System,
  taken: Taken,
): readonly Mark[] {
  const { legs, diagonal } = surface.chalk.check;
  if (diagonal === 0) return [];
  const [a, corner, b] = triangle(surface).map((point) => toPaper(scale, point)) as [Spot, Spot, Spot];
  const tick = (at: Spot, along: number) =>
    path([move(at, along + Math.PI / 2, 1.5), move(at, along - Math.PI / 2, 1.5)], 'thick');
  const words = (p: Spot, q: Spot, length: number, offs: readonly number[]) => {
    const angle = angleTo(p, q);
    const turn = Math.abs(Math.cos(angle)) < 0.3 ? 90 : 0;
    const tries = offs.flatMap((off) =>
      [0, 6, -6, 12, -12, 20, -20].map((shift) =>
        text(
          move(move(between(p, q), angle, shift), angle + Math.PI / 2, off),
          printLength(length, system, { feet: true }),
          { turn, clear: 'all' },
        ),
      ),
    );
    return firstFree(tries, taken);
  };
  return [
    tick(a, angleTo(corner, a)),
    tick(b, angleTo(corner, b)),
    path([a, b], 'thin'),
    words(corner, a, legs[0], [-4, 4]),
    words(corner, b, legs[1], [4, -4]),
    words(a, b, diagonal, [0]),
  ];
}
