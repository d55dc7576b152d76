import type { Fault } from '../layout/Layout.ts';
import { sayFigures } from './sayFigures.ts';
import type { SheetContext } from './SheetContext.ts';

const MOST_NAMES = 8;

/** What the layout itself has to say, one line a fault, with the pieces by name; or the one line that there is none. */
export function faultLines(context: SheetContext): readonly string[] {
  const faults = context.packet.surfaces.flatMap((surface) => surface.faults);
  const noCheck = context.packet.surfaces
    .filter(({ adjustment }) => adjustment.redundancy <= 0)
    .map(({ adjustment }) => context.say('room.noCheck', { diagonal: adjustment.measureNext ?? '' }));
  const lines = [...faults.map((fault) => faultLine(context, fault)), ...noCheck];
  return lines.length > 0 ? lines : [context.say('fault.none')];
}

function faultLine(context: SheetContext, fault: Fault): string {
  const shown = fault.pieces.slice(0, MOST_NAMES).join(', ');
  const more = fault.pieces.length - MOST_NAMES;
  const names = more > 0 ? `${shown} +${more}` : shown;
  return context.say(`fault.${fault.code}`, {
    ...sayFigures(context, fault.figures),
    pieces: names,
    edge: fault.edge ?? '',
  });
}
