import { sawNearest } from '../measure/index.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import { asTaped } from './asTaped.ts';
import { lineWords } from './lineWords.ts';
import type { SheetContext } from './SheetContext.ts';

/** Where the edge of each inlay is snapped: its near corner from two walls, and its size; then the lines of its own pattern. */
export function inlayLines(context: SheetContext, surface: PacketSurface): string[] {
  const { packet, say, length, longLength } = context;
  const specs = packet.spec.surfaces.find(({ name }) => name === surface.name)?.inlays ?? [];
  return specs.flatMap(({ name, along, out, from: [first, second] }) => [
    say('sheet.set-out.inlay', {
      name,
      one: first.wall,
      first: longLength(first.distance),
      other: second.wall,
      second: longLength(second.distance),
      along: longLength(along),
      out: longLength(out),
      joint: length(surface.joint),
    }),
    ...patternLines(context, surface, name),
  ]);
}

/** Where on its edge the lines of an inlay's pattern are marked, and the tile that is set first by them. */
function patternLines(context: SheetContext, { inlays = [] }: PacketSurface, name: string): string[] {
  const { packet, say, length, longLength } = context;
  const chalk = inlays.find((one) => one.name === name)?.chalk;
  if (!chalk) return [];
  const { lines, firstPiece, guide, zigzag } = chalk;
  const { step } = packet.rounding;
  return [
    ...lines.map(({ name: line, marks }) => {
      const [one, other] = marks.map(({ wall, far, end, distance }) => {
        const at = longLength(sawNearest(distance, step));
        return say('sheet.set-out.inlayMark', { wall, far: far ? 'yes' : 'no', end, distance: at });
      });
      return say('sheet.set-out.inlayLine', { name, line, one: one!, other: other! });
    }),
    say('sheet.set-out.inlayFirst', {
      ...{ name, tile: firstPiece, along: length(asTaped(context, guide.along)), upright: lines[0]!.name },
      ...{ across: length(asTaped(context, guide.across)), level: lines[1]!.name },
    }),
    ...(zigzag
      ? [
          say('sheet.set-out.corners', {
            ...{ lines: lines[2]!.name, count: 1, tile: zigzag.like },
            ...{ apart: '', every: length(zigzag.every) },
          }),
        ]
      : []),
  ];
}

/** What each inlay is made of, and how its pieces are named. */
export function inlaySays({ packet, say }: SheetContext, surface: PacketSurface): string[] {
  const { name, pieces } = surface;
  const specs = packet.spec.surfaces.find((spec) => spec.name === name)?.inlays ?? [];
  return specs.map((spec) => {
    const own = pieces.filter(({ border }) => border?.inlay === spec.name);
    return say('border.inlay', {
      name: spec.name,
      pattern: say(`pattern.${spec.pattern.name}`),
      angle: Math.round(spec.pattern.turnedDeg),
      wall: lineWords(surface, spec.pattern.along, say),
      count: own.length,
      piece: own.find(({ border }) => border?.course === 0)?.id ?? '',
      framed: own.some(({ border }) => (border?.course ?? 0) > 0) ? 'yes' : 'no',
    });
  });
}
