import type { PacketSurface } from '../packet/Packet.ts';
import type { Zone } from '../zones/Zone.ts';
import { type Box, segmentMeets, within } from './boxes.ts';
import { inRings } from './inRings.ts';
import { spotOf, type ZoneOnPaper } from './kneelSign.ts';
import type { Mark, Spot } from './Mark.ts';
import { markBounds } from './markBounds.ts';
import { doorLine } from './roomMarks.ts';
import { type Scale, toPaper } from './Scale.ts';
import { angleTo, arrow, move } from './signs.ts';

/** Length of the arrows in mm, and down to which the one at the first piece may be cut. */
const shaft = 11;
const shorter = [shaft, 8, 6, 4.5];
/** How far outside the door line the arrow out of it begins and ends, so that it lies on no piece, in mm. */
const outside = [1, 9] as const;

/** Where along the doorway its arrow stands: in the middle, or beside it where the sign to kneel needs the middle. */
export const doorShares = [0.5, 0.25, 0.75] as const;

const distance = (a: Spot, b: Spot) => Math.hypot(a[0] - b[0], a[1] - b[1]);

/** An arrow out of the doorway by which the zone is left, at a share of its width. */
export function wayOutArrow(
  surface: PacketSurface,
  zone: Zone,
  scale: Scale,
  share: number,
  tip: number = outside[1],
): readonly Mark[] {
  const line = zone.wayOut === undefined ? undefined : doorLine(surface, zone.wayOut, scale);
  if (!line) return [];
  const [from, to] = line;
  const at = move(from, angleTo(from, to), distance(from, to) * share);
  const out = angleTo(from, to) - Math.PI / 2;
  return arrow(move(at, out, outside[0]), move(at, out, tip));
}

/** How far outside the door line the tip of a shorter arrow stands, in mm, so that its head still has a shaft. */
const tips = [outside[1], 7.5, 6, 5] as const;

/** The arrow out of the doorway as long as it fits a box whole; none where it does not. */
export function wayOutWithin(surface: PacketSurface, zone: Zone, scale: Scale, box: Box): readonly Mark[] {
  const tries = tips.map((tip) => wayOutArrow(surface, zone, scale, doorShares[0], tip));
  return tries.find((marks) => marks.length > 0 && within(markBounds(marks), box)) ?? [];
}

/** Places to begin an arrow in a piece, from its middle outward, the one under its name first. */
const begins: readonly Spot[] = [-8, -6, -4.5, -3, 0, 3, 4.5, 6, 8]
  .flatMap((dx) => [-8, -6, -4.5, -3, 0, 3, 4.5, 6, 8].map((dy): Spot => [dx, dy]))
  .sort((a, b) => distance(a, [0, -3]) - distance(b, [0, -3]));

/** An arrow from the first piece towards the last, over no words; none where there is no room for one. */
export function beginArrow({ surface, zone, scale }: ZoneOnPaper, words: readonly Box[]): readonly Mark[] {
  const [start, end] = [zone.first, zone.last].map((id) => spotOf(surface, id, scale));
  const piece = surface.pieces.find(({ id }) => id === zone.first);
  if (!start || !end || !piece) return [];
  const ring = piece.shape.outer.map((point) => toPaper(scale, point));
  const tries = shorter.flatMap((most) =>
    begins.map(([dx, dy]) => {
      const begin: Spot = [start[0] + dx, start[1] + dy];
      return [begin, move(begin, angleTo(begin, end), Math.min(most, distance(begin, end)))] as const;
    }),
  );
  const free = tries.find(
    ([from, to]) =>
      distance(from, to) > 4 &&
      inRings(from, [ring]) &&
      !words.some((box) => segmentMeets(from, to, box, 0.8)),
  );
  return free ? arrow(...free) : [];
}
