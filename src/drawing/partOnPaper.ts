import type { PacketSurface } from '../packet/Packet.ts';
import type { Box } from './boxes.ts';
import { clipRing } from './clipRing.ts';
import type { Spot } from './Mark.ts';
import { overhang } from './matchLines.ts';
import type { NameRequest } from './nameBlock.ts';
import type { PlanPart, PlanParts, Side } from './PlanParts.ts';
import { lengthOn, mmPerTick, type Scale, scaleFor } from './Scale.ts';
import { surfacePoints } from './surfaceScale.ts';

/** Where a part stands on its page, in mm of paper. */
export interface PartOnPaper {
  readonly scale: Scale;
  readonly paper: Box;
  /** The part itself. */
  readonly window: Box;
  /** What is drawn: up to the paper's edge, or a little past a match line. */
  readonly shown: Box;
  /** What belongs to the part: it ends at match lines only. */
  readonly own: Box;
}

/** The box, moved out by some length on the sides where the plan ends and by another on match lines. */
function moveOut(box: Box, next: PlanPart['next'], ends: number, match: number): Box {
  const by = (side: Side) => (next[side] === undefined ? ends : match);
  return {
    left: box.left - by('left'),
    right: box.right + by('right'),
    bottom: box.bottom - by('below'),
    top: box.top + by('above'),
  };
}

/** Places a part on a page of its own. */
export function partOnPaper(
  surface: PacketSurface,
  { ratio, border }: PlanParts,
  { window, next }: PlanPart,
): PartOnPaper {
  const perTick = mmPerTick(ratio);
  const spot: Spot = [border - window.left * perTick, border - window.bottom * perTick];
  const scale = scaleFor(surfacePoints(surface), surface.turn, ratio, spot);
  const right = border + lengthOn(scale, window.right - window.left);
  const top = border + lengthOn(scale, window.top - window.bottom);
  const on = { left: border, bottom: border, right, top };
  return {
    scale,
    paper: { left: 0, bottom: 0, right: right + border, top: top + border },
    window: on,
    shown: moveOut(on, next, border, overhang),
    own: moveOut(on, next, Infinity, 0),
  };
}

/** A spot on a match line belongs to the part right of it or over it. */
export function holds({ left, bottom, right, top }: Box, [x, y]: Spot): boolean {
  return x >= left && x < right && y >= bottom && y < top;
}

/** A name's piece as far as the page shows it: a name must not stand where its piece is cut off. */
export function asShown(request: NameRequest, shown: Box): NameRequest {
  const rings = request.rings.map((ring) => clipRing(ring, shown)).filter((ring) => ring.length > 2);
  return { ...request, rings };
}
