import { lineThroughShape, type Point } from '../geometry/index.ts';
import { printLength, type System, sawDown, type Ticks } from '../measure/index.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import { type Box, grow, segmentMeets } from './boxes.ts';
import type { Say } from './Drawing.ts';
import { firstFree } from './firstFree.ts';
import { inRings } from './inRings.ts';
import type { Mark, Spot, TextMark } from './Mark.ts';
import { direction, type Scale, toPaper } from './Scale.ts';
import { move } from './signs.ts';
import { sizes, text } from './text.ts';
import { textBox } from './textBox.ts';
import { textWidth } from './textWidth.ts';

/** Length and width of the pattern's first tile along the frame's axes. */
function tileSize(surface: PacketSurface): readonly [number, number] {
  const ring = surface.pattern.tiles[0]?.ring ?? [];
  const range = (values: number[]) => Math.max(...values) - Math.min(...values);
  return [range(ring.map(([x]) => x)), range(ring.map(([, y]) => y))];
}

/** Where a ray from the crossing leaves the room. */
function leaves(surface: PacketSurface, towards: Point): Point {
  const [x, y] = surface.chalk.crossing;
  const spans = lineThroughShape({ outer: surface.outline, holes: [] }, [x, y], towards);
  const t = Math.max(0, ...spans.map(({ to }) => to));
  return [x + towards[0] * t, y + towards[1] * t];
}

/** Distance of the words from the wall, in mm of paper. */
const off = 4;
/** On a slope the words move out until they clear the walls. */
const steps = [0, 2, 4, 6, 8, 10, 12, 14];

/** Whether words stand clear of the room. */
function isOutside(words: TextMark, ring: readonly Spot[]): boolean {
  const box = grow(textBox(words), 0.8);
  return (
    !inRings(words.at, [ring]) && !ring.some((a, i) => segmentMeets(a, ring[(i + 1) % ring.length]!, box))
  );
}

/** The pieces at the ends of both axes, outside the wall they meet: size and share of a tile. */
export function endCuts(
  surface: PacketSurface,
  scale: Scale,
  print: { readonly system: System; readonly step: Ticks; readonly say: Say },
  taken: readonly Box[],
): readonly Mark[] {
  const ring = surface.outline.map((point) => toPaper(scale, point));
  const [length, width] = tileSize(surface);
  const { along, across } = surface.start.chosen.ends;
  const ends = [
    { size: along[1], of: length, turn: 0 },
    { size: across[1], of: width, turn: 90 },
    { size: along[0], of: length, turn: 180 },
    { size: across[0], of: width, turn: 270 },
  ];
  return ends.map(({ size, of, turn }) => {
    const words = print.say('drawing.endCut', {
      size: printLength(sawDown(size, print.step), print.system),
      percent: Math.round((100 * size) / of),
    });
    const [cos, sin] = direction(turn);
    const wall = toPaper(scale, leaves(surface, [cos, sin]));
    const [outX, outY] = direction(turn + scale.turn);
    const out = Math.atan2(outY, outX);
    const turned = Math.abs(outX) > 0.9 ? 90 : 0;
    // Beside the chalk line, which leaves the room at the same spot.
    const beside = textWidth(words, sizes.note) / 2 + 4;
    const tries = [1, -1].flatMap((way) =>
      steps.map((step) =>
        text(move(move(wall, out, off + step), out - Math.PI / 2, way * beside), words, { turn: turned }),
      ),
    );
    const outside = tries.filter((one) => isOutside(one, ring));
    return firstFree(outside.length > 0 ? outside : tries, taken);
  });
}
