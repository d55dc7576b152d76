import type { MovedSize } from '../drawing/index.ts';
import type { ChalkLine, ChalkMark, StoryPole } from '../layout/Layout.ts';
import { sawNearest, type Ticks } from '../measure/index.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import { LEAST_TAPED, READING_ERROR } from '../trade/index.ts';
import { asTaped } from './asTaped.ts';
import { borderLines } from './borderLines.ts';
import { faceWords, tapeWords } from './faceWords.ts';
import { followLines } from './followLines.ts';
import { inlayLines } from './inlayLines.ts';
import { movementLines } from './movementLines.ts';
import { noCheck } from './noCheck.ts';
import { repeatLines } from './repeatLines.ts';
import type { SheetContext } from './SheetContext.ts';
import { signedLength } from './signedLength.ts';

/** Every mark from both sides, offsets, how true each line is, the sticks, what to snap later, and the readings. */
export function setOutFigures(context: SheetContext, surface: PacketSurface, moved: readonly MovedSize[]) {
  const { say, length, packet } = context;
  const { chalk } = surface;
  const lines = [...chalk.lines, ...(chalk.further ?? [])].sort((a, b) => Number(a.name) - Number(b.name));
  const { system } = packet.spec.print;
  return {
    lines: lines.map((line) => lineRow(context, surface, line, moved)),
    soft: movementLines(context, surface),
    border: [
      ...followLines(context, surface),
      ...borderLines(context, surface),
      ...inlayLines(context, surface),
      ...repeatLines(context, surface),
    ],
    trueTo: lines.some(({ error }) => error)
      ? say('sheet.set-out.trueTo', { reading: length(READING_ERROR.value[system]) })
      : '',
    poles: (chalk.poles ?? [])
      .filter(({ joints }) => joints.length > 0)
      .map((pole) => poleTable(context, pole, chalk)),
    later: (chalk.later ?? []).map(({ zone, bare, lines: fresh }, i, all) => ({
      // Words without lines of their own stand in the paragraph before, as long as the order of the zones allows it.
      leads: lines.some(({ error }) => error) && all.slice(0, i + 1).every((one) => one.lines.length === 0),
      words: say('sheet.set-out.later', {
        zone,
        bare: bare.length,
        lines: bare.join(', '),
        fresh: fresh.length,
      }),
      lines: fresh.map((line) => lineRow(context, surface, line, [])),
    })),
    adjusted: adjustedRows(context, surface),
    noCheck: noCheck(context, surface).join(' '),
  };
}

function lineRow(
  context: SheetContext,
  surface: PacketSurface,
  line: ChalkLine,
  moved: readonly MovedSize[],
) {
  return {
    name: line.name,
    marks: line.marks.map((mark) => ({
      ...markRow(context, surface, mark),
      letter: moved.find((one) => one.line === line.name && one.edge === mark.edge)?.letter ?? '',
    })),
    notes: lineNotes(context, surface, line),
  };
}

/**
 * A mark from the end where the tape is hooked, to the nearest step of the saw, and from the other end: what the first leaves of the
 * wall as used, which a tape reads in steps too, so that both add up on paper.
 */
function markRow(context: SheetContext, surface: PacketSurface, mark: ChalkMark) {
  const { say, longLength, packet } = context;
  const { step } = packet.rounding;
  const first = sawNearest(mark.distance, step);
  const other = mark.both?.find(({ end, distance }) => end !== mark.end || distance !== mark.distance);
  const sum = asTaped(context, mark.distance + (other?.distance ?? 0), step);
  const end = tapeWords(surface, mark.edge, mark.end, say);
  return {
    edge: faceWords(surface, mark.edge, say),
    from: say(`sheet.set-out.${first === 0 ? 'at' : 'from'}`, { end }),
    distance: first === 0 ? '' : longLength(first),
    other: other ? otherSaid(context, surface, { ...other, edge: mark.edge }, [sum - first, sum]) : '',
  };
}

/** The mark from its other end; where it stands on that end by name; nothing where it stands too near to it for a tape. */
function otherSaid(
  { say, longLength, packet }: SheetContext,
  surface: PacketSurface,
  { edge, end, distance }: Pick<ChalkMark, 'edge' | 'end' | 'distance'>,
  [rest, sum]: readonly [Ticks, Ticks],
): string {
  const { step } = packet.rounding;
  const isAt = sawNearest(distance, step) === 0;
  if (!isAt && distance < Math.max(step, LEAST_TAPED.value[packet.spec.print.system])) return '';
  return say(`sheet.set-out.${isAt ? 'otherAt' : 'other'}`, {
    end: tapeWords(surface, edge, end, say),
    distance: longLength(rest),
    sum: longLength(sum),
  });
}

function lineNotes(
  { say, length, longLength, packet }: SheetContext,
  surface: PacketSurface,
  { snappable, byOffsets, offsets, error, counted }: ChalkLine,
): string[] {
  const { step, system } = { ...packet.rounding, ...packet.spec.print };
  const notes = snappable || byOffsets ? [] : [say('sheet.set-out.squared')];
  if (counted)
    notes.push(
      say('sheet.set-out.counted', {
        tile: counted.tile,
        from: counted.from,
        distance: longLength(counted.distance),
      }),
    );
  const [one, other] = offsets?.stations ?? [];
  if (byOffsets) notes.push(say('sheet.set-out.byOffsets'));
  if (offsets && one && other)
    notes.push(
      say('sheet.set-out.offsets', {
        edge: faceWords(surface, offsets.edge, say),
        end: tapeWords(surface, offsets.edge, offsets.end, say),
        first: longLength(sawNearest(one.offset, step)),
        firstAt: longLength(one.distance),
        second: longLength(sawNearest(other.offset, step)),
        secondAt: longLength(other.distance),
      }),
    );
  if (error) {
    const up = (ticks: Ticks) => length(Math.ceil(ticks / FINEST[system]) * FINEST[system]);
    const figures = { off: up(error.off), turn: up(error.turn), over: longLength(error.over) };
    notes.push(say('sheet.set-out.error', figures));
  }
  return notes;
}

/** Errors are printed upwards, in 1/64 in or half millimetres. */
const FINEST = { inches: 127, mm: 160 } as const;

/** Joints on a stick, or where none runs straight the same place of each tile or row, each to the nearest step of the saw, none added to another; in feet from one foot up, as the marks on the walls. */
function poleTable(
  { say, longLength, packet }: SheetContext,
  { axis, module, joints }: StoryPole,
  { poles, guide }: PacketSurface['chalk'],
) {
  // Where no joint runs straight, what a mark stands for is a place of the tiles, the same in each.
  const on = guide && !guide.onJoints ? 'tiles' : 'joints';
  return {
    title: say('sheet.set-out.pole', {
      axis: poles?.length === 1 ? 'both' : axis,
      on,
      module: longLength(module),
    }),
    joints: joints.map((joint, i) => ({
      number: i + 1,
      distance: longLength(sawNearest(joint, packet.rounding.step)),
    })),
  };
}

/** What the tape said and what the drawing uses, wall by wall. */
function adjustedRows({ longLength, length }: SheetContext, { adjustment }: PacketSurface) {
  return adjustment.readings.map((reading) => ({
    id: reading.id,
    read: reading.read.map((one) => longLength(one)).join(' · '),
    used: longLength(reading.used),
    correction: signedLength(reading.correction, length),
  }));
}
