import type { PacketNote } from '../packet/Packet.ts';
import type { SheetContext } from './SheetContext.ts';
import { sayFigures } from './sayFigures.ts';

/** A note of the packet as a sentence: of a limit that fails, its name and what would pass. */
export function noteText(context: SheetContext, { code, figures, at }: PacketNote): string {
  const sentence = context.say(code, sayFigures(context, figures));
  const limit = context.packet.limits.find((one) => !one.pass && `limit.${one.rule}` === code);
  const name = code.startsWith('height.') ? `${at[0]}: ` : '';
  if (!limit?.wouldPass) return `${name}${sentence}`;
  return `${sentence}. ${context.say(limit.wouldPass.code, sayFigures(context, limit.wouldPass.figures))}`;
}
