import { TICKS_PER_INCH, TICKS_PER_MM } from '../measure/index.ts';
import { CHECK_RUN, checkRun, type Limit } from '../trade/index.ts';
import type { SheetContext } from './SheetContext.ts';
import { sayFigure, sayFigures } from './sayFigures.ts';
import { saySource } from './saySource.ts';
import { sayThing } from './sayThing.ts';
import { stoppedLayers } from './stoppedLayers.ts';
import { taperLines } from './taperTable.ts';

/** A gate: what must be true before a tile is set, with room to write what was found. */
export interface Gate {
  readonly what: string;
  readonly limit: string;
  /** Already known from the job file; empty where it is found on the floor. */
  readonly found: string;
  /** `pass`, `fail`, `advice` where the trade advises and does not forbid, or `open` where only the floor can tell. */
  readonly state: 'pass' | 'fail' | 'advice' | 'open';
  /** A question of health: nobody may sign it away. */
  readonly stop?: boolean;
  /** What to do, or what would pass. */
  readonly note: string;
  readonly source: string;
}

/** All gates of a job in the order in which they are passed: stops, tile, base, heights. */
export function gates(context: SheetContext): readonly Gate[] {
  const { limits } = context.packet;
  const stops = limits.filter(({ rule }) => rule.startsWith('house.'));
  const others = limits.filter(({ rule }) => !rule.startsWith('house.'));
  return [
    ...stops.map((limit) => limitGate(context, limit)),
    ...tileGates(context),
    ...others.map((limit) => limitGate(context, limit)),
    ...taperGates(context),
    ...baseGates(context),
    ...heightGates(context),
  ];
}

function limitGate(context: SheetContext, limit: Limit): Gate {
  const { say } = context;
  const onSite = limit.found === 'onSite' || isAssumed(context, limit);
  const unread = limit.rule === 'joint.spread' && readOnce(context);
  const state = onSite || unread ? 'open' : limit.pass ? 'pass' : limit.advice ? 'advice' : 'fail';
  return {
    what: say(`limit.${limit.rule}`),
    limit: unread ? '________' : limit.limit === 'onSite' ? '' : limitSaid(context, limit),
    found: onSite ? '' : foundText(context, limit),
    state,
    note: limit.wouldPass ? say(limit.wouldPass.code, sayFigures(context, limit.wouldPass.figures)) : '',
    // Where a rule comes from matters while it is open or broken; all sources stand on the sheet of what was assumed.
    source: state === 'pass' ? '' : saySource(say, limit.source),
    ...(limit.rule.startsWith('house.') ? { stop: true } : {}),
  };
}

/** A limit, with the straightedge that it is for where it is one of flatness. */
function limitSaid(context: SheetContext, { limit, unit, over }: Limit): string {
  const text = limitText(context, limit, unit);
  return over === undefined
    ? text
    : context.say('limit.under', { gap: text, over: context.longLength(over) });
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

/** One tile that was measured tells no spread. */
function readOnce({ packet }: SheetContext): boolean {
  return packet.spec.tiles.every(({ readings }) => readings.length === 1);
}

/** What was found; a length that differs from its limit by less than the tape shows is told as a decimal. */
function foundText(context: SheetContext, { found, limit, unit }: Limit): string {
  const text = limitText(context, found, unit);
  const alike = found !== limit && text === limitText(context, limit, unit);
  if (!alike || unit !== 'ticks' || typeof found === 'string') return text;
  return context.packet.spec.print.system === 'mm'
    ? `${context.number(found / TICKS_PER_MM, 2)} mm`
    : `${context.number(found / TICKS_PER_INCH, 3)} in`;
}

/** A found value or a limit in its unit; a word such as `unknown` comes from the catalogue. */
function limitText(context: SheetContext, value: number | string, unit: string): string {
  if (typeof value === 'string')
    return value === 'onSite' || value === 'unknown' ? context.say(`limit.found.${value}`) : value;
  const named: Readonly<Record<string, string>> = {
    ticks: 'length',
    share: 'valueShare',
    areaM2: 'areaM2',
    tempC: 'valueTempC',
  };
  const text = sayFigure(context, named[unit] ?? 'valueCount', value);
  return unit === 'hours' || unit === 'days' ? context.say(`unit.${unit}`, { count: value }) : String(text);
}

/** Ten tiles and nine joints in a row, to be laid out dry before a line is snapped; or the row that was laid already. */
function tileGates({ packet, say, length, longLength }: SheetContext): Gate[] {
  return packet.spec.tiles.map((tile) => ({
    what: say('gate.run', { name: tile.name, tileCount: tile.run?.tiles ?? CHECK_RUN.value }),
    limit: longLength(checkRun(tile.length, packet.spec.joint, tile.run?.tiles)),
    found: tile.run ? longLength(tile.run.read) : '',
    state: tile.run ? 'pass' : 'open',
    note: say(tile.run ? 'gate.runLaid' : 'gate.runNote', {
      size: `${length(tile.length)} × ${length(tile.width)}`,
      spread: length(tile.spread),
      count: tile.readings.length,
      joint: length(packet.spec.joint),
    }),
    source: '',
  }));
}

/** Walls whose taper shows: seen before a line is snapped, it can still be sent where nobody looks. */
function taperGates(context: SheetContext): Gate[] {
  const { packet, say } = context;
  return packet.surfaces.flatMap((surface) => {
    const note = taperLines(context, surface).join(' ');
    const gate = { what: say('gate.taper'), limit: '', found: '', note, source: '' };
    return note === '' ? [] : [{ ...gate, state: 'advice' as const }];
  });
}

/** What comes up and goes back, and the state of the base under it. */
function baseGates(context: SheetContext): Gate[] {
  const { packet, say } = context;
  const { base } = packet;
  const open = (what: string, note: string): Gate => ({
    what,
    limit: '',
    found: '',
    state: 'open',
    note,
    source: '',
  });
  return [
    ...(base.removed.length > 0
      ? [
          open(
            say('gate.comesUp', { layers: base.removed.map(({ name }) => sayThing(say, name)).join(', ') }),
            say(
              base.removed.some(({ name }) => stoppedLayers(packet).has(name))
                ? 'gate.comesUpStopped'
                : 'gate.comesUpNote',
            ),
          ),
        ]
      : []),
    ...base.comesOut.map(({ what, who }) =>
      open(
        say('gate.comesOut', {
          what: sayThing(say, what),
          who: who === undefined ? '________' : sayThing(say, who),
        }),
        say('gate.comesOutNote'),
      ),
    ),
    open(say('gate.base'), say('gate.baseNote')),
    { ...open(say('gate.film'), say('gate.filmNote')), ...readOf(context, 'film') },
    { ...open(say('gate.moisture'), say('gate.moistureNote')), ...readOf(context, 'moisture') },
  ];
}

/** What the job file already says of film or moisture: figure, date and limit; nothing where nobody has read it yet. */
function readOf(context: SheetContext, what: 'film' | 'moisture'): Partial<Gate> {
  const check = context.packet.baseChecks?.find((one) => one.what === what);
  if (!check || check.code.endsWith('.test')) return {};
  const { say } = context;
  const figures = sayFigures(context, check.figures);
  const note = say(check.code, figures);
  if (figures.limit === undefined) return { state: check.state, note };
  return {
    limit: String(figures.limit),
    found: say('gate.readOn', { reads: figures.reads, on: figures.on }),
    state: check.state,
    note: check.state === 'pass' ? '' : note,
  };
}

function heightGates(context: SheetContext): Gate[] {
  const { packet, say, length } = context;
  const { heights } = packet;
  return [
    {
      what: say('gate.undercut'),
      limit: length(heights.undercut),
      found: '',
      state: 'open',
      note: say('gate.undercutNote', { stack: length(heights.stack) }),
      source: '',
    },
    ...heights.results.map(
      (result): Gate => ({
        what: sayThing(say, result.name),
        limit: '',
        found: '',
        state: result.pass ? 'pass' : 'fail',
        note: say(result.code, sayFigures(context, result.figures)),
        source: '',
      }),
    ),
  ];
}
