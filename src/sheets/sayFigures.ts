import { printArea, printMass, printTemperature, printVolume } from '../measure/index.ts';
import { figureKind } from '../trade/index.ts';
import type { SheetContext } from './SheetContext.ts';

type Printing = Pick<SheetContext, 'length' | 'number' | 'packet' | 'date' | 'time'>;

/** Figures of a code as its words want them: lengths, areas, masses and the rest printed with their unit, by the ending of their name. */
export function sayFigures(
  context: Printing,
  figures: Readonly<Record<string, number | string>>,
): Record<string, string | number> {
  return Object.fromEntries(
    Object.entries(figures).map(([key, value]) => [key, sayFigure(context, key, value)]),
  );
}

/** One figure as printed; dates and names are text already. */
export function sayFigure(
  { length, number, packet, date, time }: Printing,
  key: string,
  value: number | string,
): string | number {
  if (typeof value === 'string') return sayText({ date, time }, value);
  const { system } = packet.spec.print;
  switch (figureKind(key, value)) {
    case 'length':
      return length(value);
    case 'area':
      return printArea(value, system);
    case 'mass':
      return printMass(value, system);
    case 'volume':
      return printVolume(value, system);
    case 'temperature':
      return printTemperature(value, system);
    case 'share':
      return `${number(value * 100, 1)} %`;
    case 'metres':
      return system === 'mm' ? `${number(value, 1)} m` : `${number(value / 0.3048, 1)} ft`;
    default:
      return Number.isInteger(value) ? value : number(value, 3);
  }
}

/** A text as it stands, but a date or a local time in the way of the sheet's language. */
function sayText({ date, time }: Pick<SheetContext, 'date' | 'time'>, value: string): string {
  if (/^\d{4}-\d\d-\d\dT\d\d:\d\d$/.test(value)) return time(value);
  return /^\d{4}-\d\d-\d\d$/.test(value) ? date(value) : value;
}
