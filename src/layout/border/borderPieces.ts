import type { BorderCourse } from '../../job/Job.ts';
import { faultsOf } from '../faults/faultsOf.ts';
import type { Fault, Left, Piece } from '../Layout.ts';
import type { NamedPiece } from '../names/namePieces.ts';
import type { LaidPiece } from '../pieces/LaidPiece.ts';
import type { OfBorder } from './Border.ts';
import type { LaidStrip } from './layCourse.ts';

/** A strip of a border with what its pieces are called by. */
export interface NamedStrip extends LaidStrip {
  readonly of: OfBorder;
  readonly tile: BorderCourse['tile'];
  /** What the names of its pieces begin with, such as `AB-`. */
  readonly prefix: string;
  /** Number of the first piece. */
  readonly first: number;
}

/** What a border adds to a layout. */
export interface BorderLaid {
  readonly pieces: readonly Piece[];
  readonly left: readonly Left[];
  readonly faults: readonly Fault[];
  /** Whole tiles that take of a gap. */
  readonly kept: readonly LaidPiece[];
}

/** Findings that a course may have: that it is narrower than its tile is as it should be. */
const TOLD: readonly Fault['code'][] = ['web', 'thinStrip', 'keptWhole', 'gapOnly'];

/** The pieces of all strips with their names, from where each wall begins; a second piece of one tile has a letter. */
export function borderPieces(strips: readonly NamedStrip[], joint: number): BorderLaid {
  const laid = strips.map((strip) => {
    const named = namedIn(strip);
    const faults = faultsOf(named, strip.left, strip.ground, joint);
    return {
      pieces: named.map((one) => pieceOf(one, strip)),
      left: strip.left.map(({ shape, face, gap }): Left => {
        return { shape, why: 'gapOnly', edge: strip.ground.faces[face]!.id, gap };
      }),
      faults: faults.filter(({ code }) => TOLD.includes(code)),
    };
  });
  return {
    pieces: laid.flatMap(({ pieces }) => pieces),
    left: laid.flatMap(({ left }) => left),
    faults: laid.flatMap(({ faults }) => faults),
    kept: strips.flatMap(({ pieces }) => pieces.filter(({ kept }) => kept !== undefined)),
  };
}

function namedIn({ pieces, prefix, first }: NamedStrip): NamedPiece[] {
  const order = [...pieces].sort((a, b) => a.place.j - b.place.j || a.place.i - b.place.i);
  const places = [...new Set(order.map(({ place }) => `${place.j} ${place.i}`))];
  const seen = new Map<string, number>();
  return order.map((laid): NamedPiece => {
    const key = `${laid.place.j} ${laid.place.i}`;
    const before = seen.get(key) ?? 0;
    seen.set(key, before + 1);
    const number = first + places.indexOf(key);
    return {
      id: `${prefix}${number}${['', 'b', 'c', 'd', 'e'][before] ?? before + 1}`,
      at: { columns: number - 1, rows: laid.place.j },
      laid,
    };
  });
}

function pieceOf({ id, at, laid }: NamedPiece, { of, tile, turn, ground: { faces } }: NamedStrip): Piece {
  const degrees = (turn * 180) / Math.PI;
  const quarters = Math.round(degrees / 90);
  const slant = degrees - 90 * quarters;
  const own = laid.faces.map((index) => faces[index]!);
  return {
    id,
    tile,
    whole: laid.whole,
    fullTile: laid.ring,
    quarter: (((quarters % 4) + 4) % 4) as Piece['quarter'],
    ...(Math.abs(slant) > 1e-9 && { slantDeg: slant }),
    shape: laid.shape,
    column: at.columns,
    row: at.rows,
    edges: own.map(({ id }) => id),
    share: Math.min(...laid.shares),
    seen: laid.seen,
    border: of,
    circles: own.flatMap(({ circle, name, gap }) =>
      circle ? [{ name, centre: circle.centre, radius: circle.radius + gap }] : [],
    ),
  };
}
