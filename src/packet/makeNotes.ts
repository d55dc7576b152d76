import type { Fault, Layout } from '../layout/Layout.ts';
import type { BaseCheck } from '../materials/baseChecks.ts';
import type { Limit } from '../trade/Limit.ts';
import type { Stages } from './makeSurface.ts';
import type { Heights, PacketNote } from './Packet.ts';
import { readingNotes } from './readingNotes.ts';

/** Faults that must be seen before the first tile; the rest only inform. */
const WARNS: ReadonlySet<Fault['code']> = new Set(['underHalf', 'thinStrip', 'web', 'nearFull', 'sliver']);

/** Everything the packet has to say that is not a figure of its own: limits that fail, faults of the layout, what the readings say of themselves. */
export function makeNotes(
  stages: readonly Stages[],
  limits: readonly Limit[],
  heights: Heights,
  checks: readonly BaseCheck[],
): PacketNote[] {
  return [
    ...limits.filter((limit) => !limit.pass).map(limitNote),
    ...heights.results
      .filter((result) => !result.pass)
      .map((result) => ({
        code: result.code,
        figures: result.figures,
        at: [result.name],
        level: 'fail' as const,
        words: `${result.name}: ${result.code}`,
      })),
    ...checks.filter(({ state }) => state === 'fail').map(checkNote),
    ...ofFloors(stages, ({ layout }) => layout.faults.map(faultNote)),
    ...ofFloors(stages, ({ layout }) => layout.tapers.walls.flatMap(taperNote)),
    ...ofFloors(stages, readingNotes),
  ];
}

/** What there is to say of each floor, with its name where there are several. */
function ofFloors(stages: readonly Stages[], notesOf: (stage: Stages) => PacketNote[]): PacketNote[] {
  return stages.flatMap((stage) =>
    notesOf(stage).map((note) => (stages.length > 1 ? { ...note, surface: stage.surface.name } : note)),
  );
}

function limitNote(limit: Limit): PacketNote {
  return {
    code: `limit.${limit.rule}`,
    figures: { found: limit.found, limit: limit.limit, source: limit.source },
    at: limit.at ?? [],
    level: limit.advice ? 'warn' : 'fail',
    words: `Fails limit ${limit.rule}: found ${limit.found}, limit ${limit.limit} (${limit.source})`,
  };
}

function checkNote({ what, code, figures }: BaseCheck): PacketNote {
  return { code, figures, at: [what], level: 'fail', words: `${what} of the base: ${code}` };
}

function faultNote(fault: Fault): PacketNote {
  return {
    code: `fault.${fault.code}`,
    figures: { ...fault.figures, pieces: fault.pieces.join(', '), edge: fault.edge ?? '' },
    at: fault.pieces.length > 0 ? fault.pieces : [fault.edge ?? ''],
    level: WARNS.has(fault.code) ? 'warn' : 'info',
    words: `${fault.code}: ${fault.pieces.join(', ')}`,
  };
}

function taperNote({ edge, runsOff, narrow, wide, shows }: Layout['tapers']['walls'][number]): PacketNote[] {
  if (!shows || narrow === undefined || wide === undefined) return [];
  const figures = { edge, runsOff, narrow, wide };
  return [{ code: 'taper.shows', figures, at: [edge], level: 'warn', words: `The taper at ${edge} shows.` }];
}
