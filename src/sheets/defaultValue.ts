import { meetsWords } from '../job/sections/edge.ts';
import { density } from '../job/values/density.ts';
import {
  M2_PER_SQ_FT,
  printMass,
  printTemperature,
  readArea,
  readLength,
  readMass,
  readTemperature,
} from '../measure/index.ts';
import { asMarked } from './asMarked.ts';
import type { SheetContext } from './SheetContext.ts';
import { sayFigure } from './sayFigures.ts';
import { sayThing } from './sayThing.ts';

/** Words that stand for a value in a job file, spaces as hyphens. */
const WORDS: ReadonlySet<string> = new Set([
  ...[
    'yes',
    'no',
    'any',
    'auto',
    'best',
    'tape',
    'planned',
    'straight',
    'mitred',
    'right',
    'solve',
    'penetrating',
    'drawn',
  ],
  ...['middle-of-the-wall', 'fewest-tiles', 'mon-fri', 'letter', 'a4', 'inches', 'mm', 'en'],
]);

/** Words that the questions of the form offer as choices. */
const CHOICES: ReadonlySet<string> = new Set([
  ...meetsWords,
  ...['porcelain', 'calibrated', 'dry', 'cement', 'plain', 'later', 'none', 'unknown'],
]);

/** How pieces are sawn, as breakage is told by it. */
const SAWN: ReadonlySet<string> = new Set(['straight', 'point', 'notch', 'u', 'hole', 'curve', 'odd']);

/** What a default is, in the units and the words of the sheet; names and whatever has no other words stand as they are. */
export function defaultValue(context: SheetContext, value: string | number): string {
  const text = String(value);
  const pairs = /^\{(.*)\}$/.exec(text)?.[1]?.split(', ');
  return pairs ? pairs.map((pair) => pairSaid(context, pair)).join(', ') : oneValue(context, text);
}

/** `straight: 3 %` as the map of a default has it. */
function pairSaid(context: SheetContext, pair: string): string {
  const [key = '', text = ''] = pair.split(': ');
  const name = SAWN.has(key) ? context.say(`assumed.sawn.${key}`) : sayThing(context.say, key);
  return `${name} ${oneValue(context, text)}`;
}

function oneValue(context: SheetContext, text: string): string {
  const { say, units } = context;
  const word = text.replaceAll(' ', '-');
  if (WORDS.has(word)) return say(`assumed.value.${word}`, { units: units.system });
  if (CHOICES.has(text)) return say(`ask.choices.${text}`);
  if (/^\d{4}-\d\d-\d\d$/.test(text)) return context.date(text);
  const hours = /^(\d\d:\d\d)-(\d\d:\d\d)$/.exec(text);
  if (hours) return [hours[1], hours[2]].map((hour) => context.clock(`2000-01-01T${hour}`)).join('–');
  const days = /^([\d.-]+) days$/.exec(text)?.[1];
  if (days) return say('assumed.days', { days: asMarked(days.replace('-', '–'), units.decimal) });
  return figureSaid(context, text) ?? asMarked(text.replaceAll(' x ', ' × '), units.decimal);
}

/** A value with a unit, in the units of the print; undefined where it is none. */
function figureSaid(context: SheetContext, text: string): string | undefined {
  const { say, units, length } = context;
  const pace = /^(.*) an hour$/.exec(text)?.[1];
  if (pace) return say('assumed.perHour', { area: oneValue(context, pace) });
  const ticks = readLength(text);
  if (ticks.ok) return length(ticks.ticks);
  const area = readArea(text);
  if (area.ok) return areaSaid(context, area.areaM2);
  const mass = readMass(text);
  if (mass.ok) return printMass(mass.massKg, units);
  const powder = density.read(text);
  if (powder.ok) return String(sayFigure(context, 'groutKgPerLitre', powder.value));
  const warmth = readTemperature(text);
  return warmth.ok ? printTemperature(warmth.tempC, units.system) : undefined;
}

/** An area as a label has it: without the decimals that a measured floor is printed with. */
function areaSaid({ units, number }: SheetContext, areaM2: number): string {
  return units.system === 'mm' ? `${number(areaM2)} m²` : `${number(areaM2 / M2_PER_SQ_FT)} sq ft`;
}
