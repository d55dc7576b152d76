import { type Point, pointInRing } from '../geometry/index.ts';
import { type Notation, printLength } from '../measure/index.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import { firstFree } from './firstFree.ts';
import type { Mark, Spot } from './Mark.ts';
import { type Scale, toPaper } from './Scale.ts';
import { angleTo, move } from './signs.ts';
import { type Taken, takenBy } from './takenBy.ts';
import { path, text } from './text.ts';

/** Corners of the check triangle, the right angle in the middle. */
type Triangle = readonly [Point, Point, Point];

/** How finely the long side is looked over for walls and obstacles. */
const looks = [0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1];

function isOpen([a, , b]: Triangle, surface: PacketSurface): boolean {
  return looks.every((t) => {
    const point: Point = [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t];
    return (
      pointInRing(point, surface.outline) && !surface.obstacles.some(({ ring }) => pointInRing(point, ring))
    );
  });
}

/** The triangle in the corner where it lies on open floor; leg 1 on line 1, leg 2 on line 2. */
function triangle(surface: PacketSurface): Triangle | undefined {
  const { crossing, check, lines } = surface.chalk;
  const [one, two] = lines.map(({ from, to }, i): Point => {
    const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
    const leg = check.legs[i] ?? 0;
    return [((to[0] - from[0]) / length) * leg, ((to[1] - from[1]) / length) * leg];
  });
  if (!one || !two) return undefined;
  const end = ([dx, dy]: Point, sign: number): Point => [crossing[0] + sign * dx, crossing[1] + sign * dy];
  const all = [1, -1].flatMap((i) => [1, -1].map((j): Triangle => [end(one, i), crossing, end(two, j)]));
  return all.find((corners) => isOpen(corners, surface)) ?? all[0];
}

const between = (a: Spot, b: Spot): Spot => [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];

/** Corners of the triangle on the paper; undefined where nothing is checked. */
function onPaper(surface: PacketSurface, scale: Scale): readonly [Spot, Spot, Spot] | undefined {
  const corners = surface.chalk.check.diagonal === 0 ? undefined : triangle(surface);
  return corners?.map((point) => toPaper(scale, point)) as [Spot, Spot, Spot] | undefined;
}

/** The lines of the 3-4-5 check: both legs marked on the chalk lines, the diagonal drawn. Words keep off them. */
export function threeFourFiveLines(surface: PacketSurface, scale: Scale): readonly Mark[] {
  const corners = onPaper(surface, scale);
  if (!corners) return [];
  const [a, corner, b] = corners;
  const tick = (at: Spot, along: number) =>
    path([move(at, along + Math.PI / 2, 1.5), move(at, along - Math.PI / 2, 1.5)], 'thick');
  return [tick(a, angleTo(corner, a)), tick(b, angleTo(corner, b)), path([a, b], 'thin')];
}

/** The lengths of the 3-4-5 check, each beside its line. */
export function threeFourFive(
  surface: PacketSurface,
  scale: Scale,
  units: Notation,
  taken: Taken,
): readonly Mark[] {
  const { legs, diagonal } = surface.chalk.check;
  const corners = onPaper(surface, scale);
  if (!corners) return [];
  const [a, corner, b] = corners;
  const words = (p: Spot, q: Spot, length: number, offs: readonly number[], others: readonly Mark[]) => {
    const angle = angleTo(p, q);
    const turn = Math.abs(Math.cos(angle)) < 0.3 ? 90 : 0;
    const tries = offs.flatMap((off) =>
      [0, 6, -6, 12, -12, 20, -20].map((shift) =>
        text(
          move(move(between(p, q), angle, shift), angle + Math.PI / 2, off),
          printLength(length, units, { feet: true }),
          { turn, clear: 'all' },
        ),
      ),
    );
    return firstFree(tries, { ...taken, boxes: [...taken.boxes, ...takenBy(others).boxes] });
  };
  const first = words(corner, a, legs[0], [-4, 4, -8, 8], []);
  const second = words(corner, b, legs[1], [4, -4, 8, -8], [first]);
  return [first, second, words(a, b, diagonal, [4, -4, 8, -8], [first, second])];
}
