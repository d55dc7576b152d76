import type { PacketSurface } from '../packet/Packet.ts';
import type { Drawing, DrawOptions, Space } from './Drawing.ts';
import type { PlanParts } from './PlanParts.ts';
import { partFrames, partNames } from './partFrames.ts';
import { penSvg } from './penSvg.ts';
import { obstacleMarks, wallMarks } from './roomMarks.ts';
import { smallScale } from './smallScale.ts';
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
  const { scale, widthMm, heightMm } = smallScale(surface, options.space, border);
  const room = [...obstacleMarks(surface, scale), ...wallMarks(surface, scale, () => 'thin')];
  const pages = [
    ...partFrames(parts, scale, ({ number }) => (number === here ? 'factory' : 'joint')),
    ...partNames(parts, scale, sizes.smallest, ({ number }) => String(number)),
  ];
  return penSvg([...room, ...pages], {
    id: options.id,
    label: options.label,
    widthMm,
    heightMm,
    ratio: null,
  });
}
