import { printTemperature } from '../measure/index.ts';
import type { Limit } from '../trade/index.ts';
import { baseAt } from './baseAt.ts';
import type { Gate } from './Gate.ts';
import { heldAgainst } from './heldAgainst.ts';
import { limitName } from './limitName.ts';
import type { SheetContext } from './SheetContext.ts';
import { sayFigure } from './sayFigures.ts';
import { saySource } from './saySource.ts';
import { sayThing } from './sayThing.ts';
import { straightedgeSaid } from './straightedgeSaid.ts';
import { wouldPassText } from './wouldPassText.ts';

/** A rule of the trade as a gate: what passes, what was found, and what to do where it does not pass. */
export function limitGate(context: SheetContext, limit: Limit): Gate {
  const { say } = context;
  const onSite = limit.found === 'onSite' || isAssumed(context, limit) || isYetToCome(context, limit);
  const unread = limit.rule === 'joint.spread' && readOnce(context, limit);
  const state = onSite || unread ? 'open' : limit.pass ? 'pass' : limit.advice ? 'advice' : 'fail';
  const said = foundAndLimit(context, limit);
  return {
    what: limitName(context, limit),
    ...(limit.bound ? { bound: say(`sheet.job-sheet.${limit.bound}`) } : {}),
    limit: unread ? '________' : limit.limit === 'onSite' ? '' : underEdge(context, limit, said.limit),
    found: onSite ? '' : said.found,
    state,
    note: [
      ...(limit.rule === 'baseJoint' ? baseAt(context) : []),
      limit.wouldPass ? wouldPassText(context, limit.wouldPass) : '',
      ...placed(context, limit),
      ...again(context, limit),
      ...enoughMortar(context, limit),
    ]
      .filter((one) => one !== '')
      .join(' '),
    // Where a rule comes from matters while it is open or broken; all sources stand on the sheet of what was assumed.
    source: state === 'pass' ? '' : saySource(say, limit.source),
    ...(limit.rule.startsWith('house.') ? { stop: true, held: say(`limit.${limit.rule}.held`, said) } : {}),
  };
}

/** Of movement joints that the floor has: which sheet shows where they run. */
function placed({ packet, say }: SheetContext, { rule, surface }: Limit): readonly string[] {
  const floor = packet.surfaces.find(({ name }) => name === surface);
  const lines = rule.startsWith('movement.') ? (floor?.movement?.lines ?? []) : [];
  return lines.length > 0 ? [say('gate.where', { sheet: say('sheet.set-out.title') })] : [];
}

/** What fails on a floor that comes up is read again too. */
function again({ say }: SheetContext, { readOn, pass }: Limit): readonly string[] {
  return readOn === undefined || pass ? [] : [say('gate.again', { layers: sayThing(say, readOn) })];
}

/** That what is bought does for the deeper notch too, where the tally counts it. */
function enoughMortar({ packet, say }: SheetContext, { rule, pass }: Limit): readonly string[] {
  const counted = packet.materials.some(({ sum }) =>
    sum.some(({ code }) => code === 'material.mortar.sum.larger'),
  );
  return rule === 'trowel' && !pass && counted ? [say('gate.enoughMortar')] : [];
}

/** A limit, with the straightedge that it is for where it is one of flatness. */
function underEdge(context: SheetContext, { over }: Limit, gap: string): string {
  return over === undefined
    ? gap
    : context.say('limit.under', { gap, over: straightedgeSaid(context, over) });
}

/** Rules whose found value may be one that nobody measured, with the settings that then stand among the defaults. */
const ASSUMED: Readonly<Record<string, RegExp>> = {
  bow: /^tile\.[^.]+\.bow$/,
  temperature: /^work\.temperature$/,
};

/** Whether what passes was assumed: then it is still to be found on the floor. */
function isAssumed({ packet }: SheetContext, { rule, pass }: Limit): boolean {
  const setting = ASSUMED[rule];
  return pass && setting !== undefined && packet.defaults.some(({ path }) => setting.test(path));
}

/** What passes now and is found out later: the room's temperature on the day. */
function isYetToCome({ packet }: SheetContext, { rule, pass }: Limit): boolean {
  return pass && rule === 'temperature' && packet.job.status !== 'finished';
}

/** One tile that was measured tells no spread. */
function readOnce({ packet }: SheetContext, { tile }: Limit): boolean {
  const own = packet.spec.tiles.filter(({ key }) => tile === undefined || key === tile);
  return own.every(({ readings }) => readings.length === 1);
}

/** Both figures in print, so that the reader sees the result that is told; with more decimals where it takes them. */
function foundAndLimit(context: SheetContext, { found, limit, unit, bound, pass }: Limit) {
  if (unit === 'ticks' && bound && typeof found === 'number' && typeof limit === 'number')
    return heldAgainst(context, { found, limit, bound, pass });
  const said = { found: limitText(context, found, unit), limit: limitText(context, limit, unit) };
  if (typeof found === 'string' || typeof limit === 'string' || found === limit || said.found !== said.limit)
    return said;
  if (unit !== 'share' && unit !== 'tempC') return said;
  const finer = (value: number) =>
    unit === 'share'
      ? `${context.number(value * 100, 3)} %`
      : printTemperature(value, context.units.system).replace(/^\S+/, () => finerTemperature(context, value));
  return { found: finer(found), limit: finer(limit) };
}

function finerTemperature({ units, number }: SheetContext, tempC: number): string {
  return number(units.system === 'mm' ? tempC : tempC * 1.8 + 32, 2);
}

/** Kind of figure that each unit of a limit is printed as. */
const KINDS: Readonly<Record<string, string>> = {
  ticks: 'length',
  share: 'valueShare',
  areaM2: 'areaM2',
  tempC: 'valueTempC',
};

/** Units that are counted and have a word. */
const COUNTED: ReadonlySet<string> = new Set(['hours', 'days', 'count']);

/** A found value or a limit in its unit; a word such as `unknown` comes from the catalogue. */
function limitText(context: SheetContext, value: number | string, unit: string): string {
  if (typeof value === 'string')
    return value === 'onSite' || value === 'unknown' ? context.say(`limit.found.${value}`) : value;
  if (unit === 'friction') return context.number(value, 2);
  const text = sayFigure(context, KINDS[unit] ?? 'valueCount', value);
  return COUNTED.has(unit) ? context.say(`unit.${unit}`, { count: value }) : String(text);
}
