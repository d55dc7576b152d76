import type { PacketSurface } from '../packet/Packet.ts';
import { lineWords } from './lineWords.ts';
import type { SheetContext } from './SheetContext.ts';

/** Where the edge of each inlay is snapped: its near corner from two walls, and its size. */
export function inlayLines(
  { packet, say, length, longLength }: SheetContext,
  surface: PacketSurface,
): string[] {
  const specs = packet.spec.surfaces.find(({ name }) => name === surface.name)?.inlays ?? [];
  return specs.map(({ name, along, out, from: [first, second] }) =>
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
  );
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
