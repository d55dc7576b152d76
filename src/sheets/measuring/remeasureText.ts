import type { Adjustment } from '../../room/Room.ts';
import { remeasureOver } from '../../trade/index.ts';
import type { SheetContext } from '../SheetContext.ts';
import { roughly } from './readingName.ts';

/**
 * What is out by more than common practice lets stand before a line is snapped: the walk round the room, corners that the
 * readings do not hold, and corners that lean while no reading checks them. None where all is within it.
 */
export function remeasureText(context: SheetContext, adjustment: Adjustment): readonly string[] {
  const { say, packet } = context;
  const limit = remeasureOver(packet.spec.print.system);
  const { misclosure, corners } = adjustment;
  const out = corners.filter(({ sd, lean }) => (sd === null ? Math.abs(lean?.by ?? 0) : 2 * sd) > limit);
  if (misclosure <= limit && out.length === 0) return [];
  const what = [
    ...(misclosure > limit ? [say('sheet.measuring.theWalk', { by: roughly(context, misclosure) })] : []),
    ...(out.length > 0
      ? [
          say('sheet.measuring.theCorners', {
            count: out.length,
            names: out.map(({ name }) => name).join(', '),
          }),
        ]
      : []),
  ];
  return [say('sheet.measuring.remeasure', { limit: context.length(limit), what: what.join('; ') })];
}
