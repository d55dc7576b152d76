import {
  FL_OZ_PER_GALLON,
  isPoured,
  KG_PER_LB,
  LITRES_PER_GALLON,
  M2_PER_SQ_FT,
  type Notation,
  printArea,
  printLength,
  printMass,
  printTemperature,
  printVolume,
  rateDecimals,
  type System,
  TICKS_PER_INCH,
} from '../measure/index.ts';
import { figureKind, soldIn } from '../trade/index.ts';
import { asMarked } from './asMarked.ts';
import type { SheetContext } from './SheetContext.ts';
import { straightedgeSaid } from './straightedgeSaid.ts';

type Printing = Pick<SheetContext, 'length' | 'longLength' | 'number' | 'units' | 'date' | 'time'>;

/**
 * Figures of a code as its words want them: lengths, areas, masses and the rest printed with their unit, by the ending of their name. What may be at
 * most is rounded down, so that whoever keeps it as printed keeps it.
 */
export function sayFigures(
  context: Printing,
  figures: Readonly<Record<string, number | string>>,
): Record<string, string | number> {
  return Object.fromEntries(
    Object.entries(figures).map(([key, value]) => [key, sayFigure(context, key, value)]),
  );
}

/** Sizes of a trowel's notches, which are told as they are sold. */
const NOTCH = /^(?:ownN|n)otch(?:Width|Depth|Space)$/;

/** From here on, in ticks, a tape is read in feet: no tile is as long. */
export const LONG = 72 * TICKS_PER_INCH;

/** No straightedge is shorter, in ticks. */
const EDGE = 12 * TICKS_PER_INCH;

/** One figure as printed; dates and names are text already. */
export function sayFigure(
  { length, longLength, number, units, date, time }: Printing,
  key: string,
  value: number | string,
): string | number {
  if (typeof value === 'string') return sayText({ date, time, units }, key, value);
  if (NOTCH.test(key)) return printLength(value, { ...units, system: soldIn(value, units.system) });
  const { system } = units;
  switch (figureKind(key, value)) {
    case 'length':
      if (/Most$/.test(key)) return printLength(value, units, { round: 'down' });
      if (/^(?:o|shortO)ver$/.test(key) && value >= EDGE)
        return straightedgeSaid({ longLength, units }, value);
      // A run goes from wall to wall, as the walls do that stand beside it.
      return key === 'run' || Math.abs(value) >= LONG ? longLength(value) : length(value);
    case 'area':
      return printArea(value, units);
    case 'mass':
      return printMass(value, units);
    case 'volume':
      return sayVolume(value, units, number);
    case 'temperature':
      return printTemperature(value, system);
    case 'share':
      return `${number(value * 100, 1)} %`;
    case 'metres':
      return system === 'mm' ? `${number(value, 1)} m` : `${number(value / 0.3048, 1)} ft`;
    default:
      return sayRate(key, value, system, number) ?? (Number.isInteger(value) ? value : number(value, 3));
  }
}

const QUARTS_PER_GALLON = 4;

function sayVolume(litres: number, units: Notation, number: Printing['number']): string {
  return units.system === 'inches' && isPoured(litres)
    ? `${number((litres / LITRES_PER_GALLON) * FL_OZ_PER_GALLON, 1)} fl oz`
    : printVolume(litres, units);
}

/** What a rate is in the units of an inch job; in a metric job it stands as it is. */
const RATES: readonly (readonly [ending: RegExp, metric: string, inches: string, factor: number])[] = [
  [/KgPerM2$/, 'kg/m²', 'lb/sq ft', M2_PER_SQ_FT / KG_PER_LB],
  [/KgPerLitre$/, 'kg/L', 'lb/gal', LITRES_PER_GALLON / KG_PER_LB],
  [/LitresPerM2$/, 'L/m²', 'fl oz/sq ft', (M2_PER_SQ_FT * FL_OZ_PER_GALLON) / LITRES_PER_GALLON],
  [/M2PerLitre$/, 'm²/L', 'sq ft/qt', LITRES_PER_GALLON / QUARTS_PER_GALLON / M2_PER_SQ_FT],
];

/** Decimals of a rate; what a label says a bottle covers is no truer than a tenth. */
function digitsOf(key: string, rate: number): number {
  return rate >= 10 && /M2PerLitre$/.test(key) ? 1 : rateDecimals(rate);
}

/** A rate with its unit, by the ending of its name; nothing where the figure is none. */
function sayRate(key: string, value: number, system: System, number: Printing['number']): string | undefined {
  const [, metric, inches, factor = 1] = RATES.find(([ending]) => ending.test(key)) ?? [];
  if (!metric) return undefined;
  const rate = system === 'mm' ? value : value * factor;
  return `${number(rate, digitsOf(key, rate))} ${system === 'mm' ? metric : inches}`;
}

/** Texts that are figures, as the job file has them. */
const FIGURES = new Set(['reads', 'limit']);

/** A text as it stands, but a date, a local time or a figure in the way of the sheet's language. */
function sayText(
  { date, time, units }: Pick<SheetContext, 'date' | 'time' | 'units'>,
  key: string,
  value: string,
): string {
  if (/^\d{4}-\d\d-\d\dT\d\d:\d\d$/.test(value)) return time(value);
  if (/^\d{4}-\d\d-\d\d$/.test(value)) return date(value);
  return FIGURES.has(key) ? asMarked(value, units.decimal) : value;
}
