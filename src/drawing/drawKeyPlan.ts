import type { PacketSurface } from '../packet/Packet.ts';
import type { Drawing, DrawOptions, Space } from './Drawing.ts';
import type { PlanParts } from './PlanParts.ts';
import { partFrames, partNumbers } from './partFrames.ts';
import { penSvg } from './penSvg.ts';
import { obstacleMarks, wallMarks } from './roomMarks.ts';
import { extent, type Scale } from './Scale.ts';
import { surfacePoints } from './surfaceScale.ts';
import { sizes } from './text.ts';

/** Paper round the room in mm. */
const border = 1;

/** A small plan without a scale: the room's outline and the pages of its plan by their numbers, this one's framed heavily. */
export function drawKeyPlan(
  surface: PacketSurface,
  parts: PlanParts,
  here: number,
  options: Pick<DrawOptions, 'id' | 'label'> & { readonly space: Space },
): Drawing {
  const size = extent(surfacePoints(surface), surface.turn);
  const { widthMm, heightMm } = options.space;
  const perTick = Math.min((widthMm - 2 * border) / size.width, (heightMm - 2 * border) / size.height);
  const scale: Scale = {
    ratio: 1,
    paperMmPerTick: perTick,
    turn: surface.turn,
    origin: size.lowerLeft,
    spot: [border, border],
  };
  const room = [...obstacleMarks(surface, scale), ...wallMarks(surface, scale, () => 'thin')];
  const pages = [
    ...partFrames(parts, scale, ({ number }) => (number === here ? 'factory' : 'joint')),
    ...partNumbers(parts, scale, sizes.smallest),
  ];
  return penSvg([...room, ...pages], {
    id: options.id,
    label: options.label,
    widthMm: size.width * perTick + 2 * border,
    heightMm: size.height * perTick + 2 * border,
    ratio: null,
  });
}
