import { dryRow } from '../job/dryRow.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import { CHECK_RUN, comesUpAs, type Limit, undercutPlay } from '../trade/index.ts';
import { asTaped } from './asTaped.ts';
import { checkText, readBy } from './checkText.ts';
import { drainGates } from './drainGates.ts';
import { floorOf } from './floorOf.ts';
import type { Gate } from './Gate.ts';
import { isUndercut } from './isUndercut.ts';
import { laidCode } from './laidCode.ts';
import { limitGate } from './limitGate.ts';
import { noCheck } from './noCheck.ts';
import { readAgain } from './readAgain.ts';
import type { SheetContext } from './SheetContext.ts';
import { sayApart } from './sayApart.ts';
import { sayFigures } from './sayFigures.ts';
import { sayThing } from './sayThing.ts';
import { stockGates } from './stockGates.ts';
import { stoppedLayers } from './stoppedLayers.ts';
import { stripGates } from './stripGates.ts';
import { taperLines } from './taperTable.ts';
import { tileSize } from './tileSize.ts';
import { wayOutGates } from './wayOutGates.ts';
import { webGates } from './webGates.ts';
import { whoDoes } from './whoDoes.ts';

/** All gates of a job in the order in which they are passed: stops, the room's readings, tile, base, heights. */
export function gates(context: SheetContext): readonly Gate[] {
  const { limits } = context.packet;
  const stops = limits.filter(({ rule }) => rule.startsWith('house.'));
  const others = limits.filter((limit) => !limit.rule.startsWith('house.') && !saidByOther(limits, limit));
  const all = [
    ...stops.map((limit) => limitGate(context, limit)),
    ...readingGates(context),
    ...stockGates(context),
    ...tileGates(context),
    ...others.map((limit) => limitGate(context, limit)),
    ...webGates(context),
    ...stripGates(context),
    ...taperGates(context),
    ...baseGates(context),
    ...heightGates(context),
    ...drainGates(context),
    ...wayOutGates(context),
    ...sealingGates(context),
  ];
  return all.map((gate) => marked(context, gate));
}

/**
 * Trowel and bed are one piece of work, so one gate orders it where either falls short: a trowel that is deep enough for its tile leaves
 * it to the bed that the heights count with; one that is not asks for the deeper of both beds itself.
 */
function saidByOther(limits: readonly Limit[], { rule, pass }: Limit): boolean {
  const fails = (other: string) => limits.some((one) => one.rule === other && !one.pass);
  return (rule === 'trowel' && pass && fails('bed')) || (rule === 'bed' && fails('trowel'));
}

/** The same gate with its result in words, where a figure is held against a limit and where it fails, and what may be signed for. */
function marked({ say }: SheetContext, gate: Gate): Gate {
  const compared = gate.limit !== '' && gate.found !== '' && gate.state !== 'open';
  if (gate.stop || !(compared || gate.state === 'fail')) return gate;
  return gate.state === 'pass'
    ? { ...gate, mark: say('limit.pass') }
    : { ...gate, mark: say('limit.fail'), signed: true };
}

/** Readings that do not agree, by which no line is snapped; and rooms that no reading checks. */
function readingGates(context: SheetContext): Gate[] {
  const { say } = context;
  return [
    ...told(context, readAgain, { what: say('gate.readAgain'), state: 'open', holds: true }),
    ...told(context, noCheck, { what: say('gate.noCheck'), state: 'open' }),
  ];
}

/** A gate for each floor of which there is something to say. */
function told(
  context: SheetContext,
  linesOf: (context: SheetContext, surface: PacketSurface) => readonly string[],
  gate: Pick<Gate, 'what' | 'state' | 'holds'>,
): Gate[] {
  return context.packet.surfaces.flatMap((surface) => {
    const note = linesOf(context, surface).join(' ');
    const what = floorOf(context.packet, surface, gate.what);
    return note === '' ? [] : [{ ...gate, what, limit: '', found: '', note, source: '' }];
  });
}

/** Ten tiles and nine joints in a row, to be laid out dry before a line is snapped; or the row that was laid already. Of the exact mean: what rounding takes off one tile would count ten times. */
function tileGates(context: SheetContext): Gate[] {
  const { packet, say, length, longLength } = context;
  return packet.spec.tiles.map((tile) => ({
    what: say('gate.run', {
      name: tile.name,
      shape: tile.shape?.kind ?? 'rectangle',
      tileCount: tile.run?.tiles ?? CHECK_RUN.value,
    }),
    bound: say('sheet.job-sheet.shouldBe'),
    limit: longLength(asTaped(context, dryRow(tile, packet.spec.joint, tile.run?.tiles))),
    found: tile.run ? longLength(tile.run.read) : '',
    state: tile.run ? 'pass' : 'open',
    note: say(tile.run ? 'gate.runLaid' : 'gate.runNote', {
      size: tileSize(context, tile),
      spread: length(tile.spread),
      count: tile.readings.length,
      joint: length(packet.spec.joint),
    }),
    source: '',
  }));
}

/** Walls whose taper shows: seen before a line is snapped, it can still be sent where nobody looks. */
function taperGates(context: SheetContext): Gate[] {
  return told(context, taperLines, { what: context.say('gate.taper'), state: 'advice' });
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
  const out = base.comesOut
    .map(({ what }) => `${sayThing(say, what)} (${whoDoes(context, what, 'other')})`)
    .join(', ');
  return [
    ...(base.removed.length > 0
      ? [
          open(
            say('gate.comesUp', { layers: base.removed.map(({ name }) => sayThing(say, name)).join(', ') }),
            upNote(context),
          ),
        ]
      : []),
    ...(base.comesOut.length > 0
      ? [open(say('gate.comesOut', { what: out }), say('gate.comesOutNote'))]
      : []),
    open(say('gate.base'), say('gate.baseNote')),
    { ...open(say('gate.film'), say('gate.filmNote')), ...readOf(context, 'film') },
    { ...open(say('gate.moisture'), say('gate.moistureNote')), ...readOf(context, 'moisture') },
  ];
}

/** What is to be done where layers come up: what they leave, and the strips and nails that held them. */
function upNote({ packet, say }: SheetContext): string {
  const { removed } = packet.base;
  if (removed.some(({ name }) => stoppedLayers(packet).has(name))) return say('gate.comesUpStopped');
  const strips = removed.some(({ name }) => comesUpAs(name).strips);
  return say('gate.comesUpNote', { strips: strips ? 'yes' : 'no' });
}

/** What the job file already says of film or moisture: figure, date and limit; nothing where nobody has read it yet. */
function readOf(context: SheetContext, what: 'film' | 'moisture'): Partial<Gate> {
  const check = context.packet.baseChecks?.find((one) => one.what === what);
  if (!check || check.code.endsWith('.test')) return {};
  const { say } = context;
  const figures = sayFigures(context, check.figures);
  const note = checkText(context, check);
  if (figures.limit === undefined) return { state: check.state, note };
  return {
    bound: say('sheet.job-sheet.most'),
    limit: String(figures.limit),
    found: say('gate.readOn', { reads: figures.reads, on: figures.on }),
    state: check.state,
    note: check.state === 'pass' ? readBy(context, check) : note,
  };
}

function heightGates(context: SheetContext): Gate[] {
  const { packet, say } = context;
  return [
    ...(isUndercut(packet) ? [undercutGate(context)] : []),
    ...packet.heights.results.map(({ name, pass, code: found, figures }): Gate => {
      const code = laidCode(packet, found);
      const fits = code === 'height.appliance.tight' ? 'open' : 'pass';
      return {
        what: sayThing(say, name),
        limit: '',
        found: '',
        state: pass ? fits : 'fail',
        note: say(code, sayApart(context, figures)),
        source: '',
      };
    }),
  ];
}

/**
 * Porous tile that the job leaves unsealed before grouting; and sealing that is booked after the time by which it is to be done: whoever
 * plans the work can still begin it on another day.
 */
function sealingGates(context: SheetContext): Gate[] {
  const { care, spec } = context.packet;
  const bare = care.seal.beforeGrouting && spec.products.sealer.kind === 'none';
  const gate = { limit: '', found: '', state: 'advice' as const, source: '' };
  const { say } = context;
  return [
    ...(bare ? [{ ...gate, what: say('gate.unsealed'), note: say('gate.unsealedNote') }] : []),
    ...lateGates(context),
  ];
}

function lateGates({ packet, say, time }: SheetContext): Gate[] {
  return packet.calendar.flatMap(({ code, from, latest }): Gate[] =>
    code !== 'seal' || latest === undefined
      ? []
      : [
          {
            what: say('gate.sealLate'),
            limit: '',
            found: '',
            state: 'open',
            note: say('gate.sealLateNote', { from: time(from), latest: time(latest) }),
            source: '',
          },
        ],
  );
}

function undercutGate({ packet: { heights, spec }, say, length }: SheetContext): Gate {
  return {
    what: say('gate.undercut'),
    bound: say('sheet.job-sheet.shouldBe'),
    limit: length(heights.undercut),
    found: '',
    state: 'open',
    note: say('gate.undercutNote', {
      undercut: length(heights.undercut),
      play: length(undercutPlay(spec.print.system)),
      stack: length(heights.stack),
    }),
    source: '',
  };
}
