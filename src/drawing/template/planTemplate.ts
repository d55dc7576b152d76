import type { Cut } from '../../cuts/Cut.ts';
import type { Turn } from '../../cuts/TileBox.ts';
import { type Box, boxOf, grow } from '../boxes.ts';
import { type TileSides, wallDownTurn } from '../cutFrame.ts';
import type { Space } from '../Drawing.ts';
import { mmPerTick } from '../Scale.ts';
import { clipSegment } from './clipSegment.ts';
import { deepest } from './deepest.ts';
import type { LaidCut, LaidEdge } from './LaidCut.ts';
import { layCut } from './layCut.ts';
import { pageGrid, pagesFor } from './pageGrid.ts';
import type { TemplatePlan } from './TemplatePlan.ts';

/** White round what is shown, and how much of the piece stays round a sawn edge where the rest is left off, in mm. */
const white = 3;
const hold = 30;
/** A template is laid on with at least this much of a factory edge in each direction, in mm. */
const rest = 30;

const perTick = mmPerTick(1);
const sides = ['left', 'bottom', 'right', 'top'] as const;

const inMm = ({ from, to }: LaidEdge) =>
  [
    [from[0] * perTick, from[1] * perTick],
    [to[0] * perTick, to[1] * perTick],
  ] as const;

const boxOfEdges = (edges: readonly LaidEdge[]): Box => boxOf(edges.flatMap(inMm));

const sizeOf = (box: Box): Space => ({
  widthMm: box.right - box.left + 2 * white,
  heightMm: box.top - box.bottom + 2 * white,
});

function common(a: Box, b: Box): Box {
  return {
    left: Math.max(a.left, b.left),
    bottom: Math.max(a.bottom, b.bottom),
    right: Math.min(a.right, b.right),
    top: Math.min(a.top, b.top),
  };
}

/** Whether a part of the piece shows enough of factory edges in both directions to lay the template on. */
function canBeLaid(part: Box, edges: readonly LaidEdge[]): boolean {
  const shown = (axis: 0 | 1) =>
    edges.reduce((sum, edge) => {
      const clipped = edge.factory ? clipSegment(...inMm(edge), part) : undefined;
      return clipped ? sum + Math.abs(clipped[1][axis] - clipped[0][axis]) : sum;
    }, 0);
  return shown(0) >= rest && shown(1) >= rest;
}

/**
 * Parts of the piece that show all its odd edges, or all sawn ones where none is odd: the least one first, then those that
 * reach to one side more, and two. A straight cut right across may run past: its ends have their sizes on the card.
 */
function parts(edges: readonly LaidEdge[]): readonly Box[] {
  const piece = boxOfEdges(edges);
  const odd = edges.filter((edge) => edge.odd);
  const sawn = odd.length > 0 ? odd : edges.filter(({ factory }) => !factory);
  if (sawn.length === 0) return [piece];
  const least = common(grow(boxOfEdges(sawn), hold), piece);
  const reaching = sides.map((side) => ({ ...least, [side]: piece[side] }));
  const both = sides.map((_, i) => {
    const next = sides[(i + 1) % 4]!;
    return { ...reaching[i]!, [next]: piece[next] };
  });
  return [least, ...reaching, ...both].filter((part) => canBeLaid(part, edges));
}

interface Choice {
  readonly laid: LaidCut;
  readonly turned: boolean;
  readonly part: Box;
  readonly pages: number;
}

/** All ways to show a cut: turned as its card or a quarter turn from it, each whole or in part. */
function choices(cut: Cut, tile: TileSides, space: Space, turn: Turn): readonly Choice[] {
  return [false, true].flatMap((turned) => {
    const laid = layCut(cut, tile, (turned ? (turn + 90) % 360 : turn) as Turn);
    const shown = [boxOfEdges(laid.edges), ...parts(laid.edges)];
    return shown.map((part) => ({ laid, turned, part, pages: pagesFor(sizeOf(part), space) }));
  });
}

/**
 * How a cut is shown at full size on the fewest pages: turned as its card, and a quarter turn from it only where that saves a page. The
 * whole piece is shown where leaving a part off saves none; what stays holds all odd edges and two factory edges to lay the template on.
 */
export function planTemplate(
  cut: Cut,
  tile: TileSides,
  space: Space,
  turn: Turn = wallDownTurn(cut),
): TemplatePlan {
  const { laid, turned, part } = choices(cut, tile, space, turn).reduce((a, b) =>
    b.pages < a.pages ? b : a,
  );
  const piece = boxOfEdges(laid.edges);
  return {
    laid,
    turned,
    part,
    broken: sides.filter((side) => Math.abs(part[side] - piece[side]) > 0.01),
    grid: pageGrid(grow(part, white), space, (window) => deepest([laid.shape], window).length > 0),
  };
}
