import { bounds, narrowness } from '../../geometry/index.ts';
import type { Ticks } from '../../measure/index.ts';
import type { Face } from '../frame/Face.ts';
import type { Ground } from '../frame/Ground.ts';
import type { Fault } from '../Layout.ts';
import type { NamedPiece } from '../names/namePieces.ts';
import type { LaidPiece, LeftPart } from '../pieces/LaidPiece.ts';
import {
  hasWebFault,
  isNearFull,
  isNearFullOn,
  isThin,
  isUnderHalf,
  leastCut,
  leastStrip,
  ROUNDING,
} from './limits.ts';

/** One finding about one piece; findings of one kind at the same edges, of the same measure of a tile, are told together. */
interface Finding {
  readonly code: Fault['code'];
  readonly edges: readonly string[];
  readonly piece?: string;
  /** The figure that matters and what it is held against, in ticks. */
  readonly size: Ticks;
  readonly limit: Ticks;
  readonly share?: number;
  /** The measure of the tile that the size is held against. */
  readonly of?: Measure;
}

type Measure = 'longer' | 'shorter';

/** Which measure of its tile lies along an axis; a square tile has but one. */
function measureAlong({ ring }: LaidPiece, axis: 0 | 1): Measure {
  const { minX, minY, maxX, maxY } = bounds(ring);
  const sides = [maxX - minX, maxY - minY] as const;
  return sides[axis] < sides[1 - axis]! - ROUNDING ? 'shorter' : 'longer';
}

/**
 * What is wrong with a layout, or worth knowing, by kind and by the edges concerned: pieces by name, the
 * smallest figure among them, of a gap that stays the widest, and the limit. Figures: `count`, `size`, `limit` in ticks, and `share`.
 */
export function faultsOf(
  pieces: readonly NamedPiece[],
  left: readonly LeftPart[],
  ground: Ground,
  joint: Ticks,
): Fault[] {
  const findings = [
    ...pieces.flatMap((piece) => findingsOf(piece, ground, joint)),
    ...left.map(({ face, gap }): Finding => {
      const { id, gapMax } = ground.faces[face]!;
      return { code: 'gapOnly', edges: [id], size: gap, limit: gapMax };
    }),
  ];
  const groups = new Map<string, Finding[]>();
  for (const finding of findings) {
    const key = `${finding.code} ${finding.of ?? ''} ${finding.edges.join(' ')}`;
    groups.set(key, [...(groups.get(key) ?? []), finding]);
  }
  return [...groups.values()].map(together);
}

function together(findings: readonly Finding[]): Fault {
  const first = findings[0]!;
  const worse = (one: Finding, than: Finding) =>
    first.code === 'gapOnly' ? one.size > than.size : one.size < than.size;
  const worst = findings.reduce((least, one) => (worse(one, least) ? one : least));
  return {
    code: first.code,
    pieces: findings.flatMap(({ piece }) => piece ?? []),
    figures: {
      count: findings.length,
      size: worst.size,
      limit: Math.round(worst.limit),
      ...(worst.share !== undefined && { share: worst.share }),
    },
    ...(first.edges.length > 0 && { edge: first.edges.join(' ') }),
  };
}

function findingsOf({ id, laid }: NamedPiece, ground: Ground, joint: Ticks): Finding[] {
  const { faces, minWeb } = ground;
  if (laid.kept) {
    const { id: edge, gap } = faces[laid.kept.face]!;
    return [{ code: 'keptWhole', edges: [edge], piece: id, size: laid.kept.gap, limit: gap }];
  }
  if (laid.whole) return [];
  const found: Finding[] = [];
  const axis = laid.shares[0] <= laid.shares[1] ? 0 : 1;
  const share = laid.shares[axis];
  const edges = edgesAcross(laid, faces, axis);
  if (laid.seen !== 'hidden' && !isParted(laid, faces) && isUnderHalf(laid, ground, joint))
    found.push(underHalf());
  if (laid.seen !== 'hidden' && isThin(laid, ground)) {
    const size = Math.round(narrowness(laid.shape.outer));
    found.push({ code: 'thinStrip', edges, piece: id, size, limit: leastStrip(laid.ring, ground), share });
  }
  if (isNearFull(laid, ground)) found.push(nearFull(id, laid, ground));
  if (hasWebFault(laid, ground)) {
    const all = laid.faces.map((index) => faces[index]!.id);
    found.push({ code: 'web', edges: all, piece: id, size: laid.web!, limit: minWeb });
  }
  return found;

  function underHalf(): Finding {
    const size = laid.extent[axis];
    const limit = leastCut(size / share, joint, ground.minShare);
    return { code: 'underHalf', edges, piece: id, size, limit, share, of: measureAlong(laid, axis) };
  }
}

/** Whether folds and the drain alone cut a piece: its tile's other parts lie beside it. */
function isParted({ faces: own }: LaidPiece, faces: readonly Face[]): boolean {
  const met = own.map((index) => faces[index]!.meets);
  return met.includes('fold') && met.every((meets) => meets === 'fold' || meets === 'drain');
}

function nearFull(id: string, laid: LaidPiece, ground: Ground): Finding {
  const { faces } = ground;
  const [x, y] = ([0, 1] as const).map((axis) =>
    isNearFullOn(laid, ground, axis) ? laid.shares[axis] : 0,
  ) as [number, number];
  const axis = x >= y ? 0 : 1;
  const share = laid.shares[axis];
  const size = laid.extent[axis];
  return {
    code: 'nearFull',
    edges: edgesAcross(laid, faces, axis),
    piece: id,
    size,
    limit: size / share,
    share,
    of: measureAlong(laid, axis),
  };
}

/** The edges that cut a piece on an axis: those square to it, or all where none is. */
function edgesAcross({ faces: own }: LaidPiece, faces: readonly Face[], axis: 0 | 1): string[] {
  const all = own.map((index) => faces[index]!);
  const square = all.filter(({ from, to }) => {
    const [x, y] = [Math.abs(to[0] - from[0]), Math.abs(to[1] - from[1])];
    return axis === 0 ? x < y : y < x;
  });
  return (square.length > 0 ? square : all).map(({ id }) => id);
}
