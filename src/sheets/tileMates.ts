import type { Cut } from '../cuts/Cut.ts';
import { shapeArea } from '../geometry/index.ts';
import type { Packet } from '../packet/Packet.ts';

/** What else comes out of a piece's tile: of the largest piece the cuts of the others, of these the cut of the largest, from whose offcut they are sawn. */
export interface TileMates {
  readonly isOffcut: boolean;
  /** Numbers of cuts, with the floor where it is another one than the piece's own. */
  readonly cuts: readonly string[];
  /** All pieces of the tile as plans of tiles name them, the largest first. */
  readonly pieces: readonly string[];
}

/** Tells of a piece of a floor what else comes out of its tile; undefined where nothing does. */
export type MatesOf = (surface: string, piece: string) => TileMates | undefined;

/** A piece with the floor and the cut it belongs to. */
interface Part {
  readonly name: string;
  readonly floor: string;
  readonly cut: Cut;
}

/** Which pieces share a tile: the largest is sawn first, as the tile sheet says, the others from what it leaves. */
export function tileMates({ surfaces, tiles }: Packet): MatesOf {
  const several = surfaces.length > 1;
  const partOf = ({ piece, cut }: { readonly piece: string; readonly cut: number }): Part => {
    const own = surfaces.find(({ name }) => several && piece.startsWith(`${name}:`)) ?? surfaces[0]!;
    return { name: piece, floor: own.name, cut: own.cuts.find(({ number }) => number === cut)! };
  };
  const shared = Object.values(tiles)
    .flatMap(({ from }) => from)
    .filter(({ pieces }) => pieces.length > 1)
    .map(({ pieces }) => pieces.map(partOf).sort((a, b) => shapeArea(b.cut.shape) - shapeArea(a.cut.shape)));
  const told = new Map(
    shared.flatMap((parts): (readonly [string, TileMates])[] => {
      const [largest, ...others] = parts as [Part, ...Part[]];
      const pieces = parts.map(({ name }) => name);
      return [
        [largest.name, { isOffcut: false, cuts: others.map((one) => numberOf(one, largest)), pieces }],
        ...others.map(
          (one) => [one.name, { isOffcut: true, cuts: [numberOf(largest, one)], pieces }] as const,
        ),
      ];
    }),
  );
  return (surface, piece) => told.get(several ? `${surface}:${piece}` : piece);
}

const numberOf = ({ floor, cut }: Part, own: Part) =>
  floor === own.floor ? String(cut.number) : `${cut.number} (${floor})`;
