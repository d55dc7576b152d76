import { shapeArea } from '../geometry/index.ts';
import type { Cut, CutKind } from './Cut.ts';
import { isHard } from './isHard.ts';
import { orderSize } from './orderSize.ts';
import { outlineEdges } from './outlineEdges.ts';
import type { UprightPiece } from './uprightPiece.ts';

/** A cut piece with its name, upright. */
export interface NamedPiece extends UprightPiece {
  readonly id: string;
  readonly tile: string;
}

/** Order in which kinds are numbered: those on the fence first. */
const KINDS: readonly CutKind[] = ['rip', 'corner', 'taper', 'notch', 'u', 'hole', 'curve', 'point', 'odd'];

/**
 * Pieces of one tile that are sawn alike share a cut: sizes as sawn, factory edges and hand are equal. Numbered from 1 by tile,
 * kind and size, the largest first.
 */
export function groupCuts(pieces: readonly NamedPiece[]): Cut[] {
  const groups = new Map<string, NamedPiece[]>();
  for (const piece of pieces) {
    const key = `${piece.tile}|${piece.key}`;
    const group = groups.get(key);
    if (group) group.push(piece);
    else groups.set(key, [piece]);
  }
  return [...groups.values()].sort((a, b) => inOrder(a[0]!, b[0]!)).map((group, i) => cutOf(group, i + 1));
}

function inOrder(a: NamedPiece, b: NamedPiece): number {
  if (a.tile !== b.tile) return a.tile < b.tile ? -1 : 1;
  const kinds = KINDS.indexOf(a.description.kind) - KINDS.indexOf(b.description.kind);
  if (kinds !== 0) return kinds;
  const [ours, theirs] = [a.description.sizes, b.description.sizes];
  for (let i = 0; i < Math.min(ours.length, theirs.length); i++) {
    const less = orderSize(theirs[i]!, b.piece.box) - orderSize(ours[i]!, a.piece.box);
    if (less !== 0) return less;
  }
  const areas = shapeArea(b.piece.shape) - shapeArea(a.piece.shape);
  return ours.length - theirs.length || areas || (a.key < b.key ? -1 : 1);
}

function cutOf(group: readonly NamedPiece[], number: number): Cut {
  const { tile, description, hand, piece } = group[0]!;
  const edges = outlineEdges(description.edges);
  return {
    number,
    tile,
    kind: description.kind,
    hand,
    pieces: group.map(({ id }) => id),
    turns: group.map(({ turn }) => turn),
    shape: piece.shape,
    circles: piece.circles.map(({ centre, radius, name }) => ({ centre, radius, name })),
    edges,
    sizes: description.sizes,
    fences: description.fences,
    hard: isHard({ kind: description.kind, edges }),
    taper: description.taper,
  };
}
