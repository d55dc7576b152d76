import { type Notation, printLength } from '../measure/index.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import type { Mark, Spot } from './Mark.ts';
import { lengthOn, type Scale, toPaper } from './Scale.ts';
import { circle } from './shapes.ts';
import { angleTo, move } from './signs.ts';
import { path, sizes, text } from './text.ts';
import { textWidth } from './textWidth.ts';

type Base = NonNullable<PacketSurface['base']>;

/** Half of what lies between the two lines of a soft joint, the least radius of a hollow spot, and of the ring round the worst. */
const halfApart = 0.4;
const leastSpot = 2;
const ring = 5;

/** A soft joint along spots: two lines. */
export function doubleLine(spots: readonly Spot[]): readonly Mark[] {
  return spots.slice(1).flatMap((to, i) => {
    const from = spots[i]!;
    const out = angleTo(from, to) + Math.PI / 2;
    return [halfApart, -halfApart].map((by) => path([move(from, out, by), move(to, out, by)], 'movement'));
  });
}

/** A crack: one line where it is still, the two lines of a soft joint where it moves and is carried up. */
export function crackMarks({ line, moving }: Base['cracks'][number], scale: Scale): readonly Mark[] {
  const spots = line.map((point) => toPaper(scale, point));
  return moving ? doubleLine(spots) : [path(spots, 'waste')];
}

/** A hollow spot: dots in a circle as wide as it was told. */
export function hollowMarks({ at, across }: Base['hollow'][number], scale: Scale): readonly Mark[] {
  const radius = Math.max(leastSpot, across === undefined ? 0 : lengthOn(scale, across) / 2);
  return [circle(toPaper(scale, at), radius, { line: 'opening', fill: 'hidden' })];
}

/** Depth under the highest reading, without its unit, which the sheet tells once. */
const depthText = (depth: number, units: Notation) => printLength(depth, units).replace(/ (?:in|mm)$/, '');

/** Each reading as its depth under the highest, where they have room; the worst spots are ringed in any case. */
export function readingMarks(
  { base, flatness }: PacketSurface,
  scale: Scale,
  units: Notation,
): readonly Mark[] {
  const readings = base?.readings ?? [];
  const highest = Math.max(...readings.map(({ height }) => height));
  const words = readings.map(({ height, at }) => ({
    at: toPaper(scale, at),
    words: depthText(highest - height, units),
  }));
  const widest = Math.max(...words.map((one) => textWidth(one.words, sizes.smallest)));
  const nearest = Math.min(
    ...words.flatMap((one, i) =>
      words.slice(i + 1).map(({ at }) => Math.hypot(at[0] - one.at[0], at[1] - one.at[1])),
    ),
  );
  const roomy = nearest >= widest + 1.5;
  const worst = (flatness?.under ?? []).flatMap((under) => (under.worst && !under.pass ? [under.worst] : []));
  const rings = readings.filter((one) =>
    worst.some(({ row, number }) => row === one.row && number === one.number),
  );
  return [
    ...(roomy ? words.map((one) => text(one.at, one.words, { size: sizes.smallest, clear: 'all' })) : []),
    ...rings.map(({ at }) =>
      circle(toPaper(scale, at), Math.max(ring, roomy ? widest / 2 + 1 : 0), { line: 'thick' }),
    ),
  ];
}
