import type { Adjustment } from '../../room/Room.ts';
import { remeasureOver } from '../../trade/index.ts';
import type { SheetContext } from '../SheetContext.ts';
import { roughly } from './readingName.ts';

/**
 * What is out by more than common practice lets stand before a line is snapped: the walk round the room, and corners that lean while
 * no reading checks them. None where all is within it. Corners of readings that agree are as sure as a tape can make them: which
 * reading would make them surer is told with the readings and stops nobody.
 */
export function remeasureText(context: SheetContext, adjustment: Adjustment): readonly string[] {
  const { say, packet } = context;
  const limit = remeasureOver(packet.spec.print.system);
  const { misclosure, corners } = adjustment;
  const out = corners.filter(({ sd, lean }) => sd === null && Math.abs(lean?.by ?? 0) > limit);
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
