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
  readonly part: Box;
  readonly pages: number;
}

/** All ways to show a cut: whole or in part, wall down or a quarter turn from it. */
function choices(cut: Cut, tile: TileSides, space: Space): readonly Choice[] {
  const turn = wallDownTurn(cut);
  const laid = [turn, ((turn + 90) % 360) as Turn].map((one) => layCut(cut, tile, one));
  const choice = (one: LaidCut, part: Box) => ({ laid: one, part, pages: pagesFor(sizeOf(part), space) });
  const whole = laid.map((one) => choice(one, boxOfEdges(one.edges)));
  const partly = laid.flatMap((one) => parts(one.edges).map((part) => choice(one, part)));
  return [...whole, ...partly];
}

/**
 * How a cut is shown at full size on the fewest pages. The whole piece is shown where leaving a part off saves no page;
 * what stays holds all odd edges and two factory edges to lay the template on.
 */
export function planTemplate(cut: Cut, tile: TileSides, space: Space): TemplatePlan {
  const { laid, part } = choices(cut, tile, space).reduce((a, b) => (b.pages < a.pages ? b : a));
  const piece = boxOfEdges(laid.edges);
  return {
    laid,
    part,
    broken: sides.filter((side) => Math.abs(part[side] - piece[side]) > 0.01),
    grid: pageGrid(grow(part, white), space, (window) => deepest([laid.shape], window).length > 0),
  };
}
