import { drawJointFullSize, drawTile } from '../drawing/index.ts';
import { isDeadEnd } from '../job/isDeadEnd.ts';
import type { Packet } from '../packet/Packet.ts';
import { type BothGate, bothGates, isBox } from './bothGates.ts';
import { bothTongues } from './bothTongues.ts';
import { isLaid } from './isLaid.ts';
import { isUndercut } from './isUndercut.ts';
import { lineWords } from './lineWords.ts';
import type { Sheet } from './Sheet.ts';
import type { SheetContext } from './SheetContext.ts';
import { widerGaps } from './widerGaps.ts';

/** May you start? Gates with limits, the five figures of the job, decisions with signatures, cautions. */
export const jobSheet: Sheet = {
  name: 'job-sheet',
  for: 'all',
  bundles: ['crew', 'office', 'packet'],
  speaks: 'crew',
  make: (context) => {
    const all = bothGates(context).map((gate) => ({
      ...gate,
      brief: gate.state === 'pass' && gate.note === '',
      // Of a floor that is laid nothing is left to be agreed.
      ...(isLaid(context.packet) ? { signed: false } : {}),
    }));
    return [
      {
        data: {
          ...whoAndWhat(context),
          stops: all.filter(({ stop }) => stop),
          gates: all.filter(({ stop }) => !stop),
          crowded: isCrowded(all),
          // What has passed by its figures alone stands under one box.
          brief: all.some(({ brief }) => brief),
          five: fiveFigures(context),
          cautions: context.packet.care.cautions
            .filter(({ code }) => !isBoxed(context.packet, code))
            .map(({ code }) => bothTongues(context, `short.${code}`)),
        },
      },
    ];
  },
};

/** As many boxes in two languages, and as many letters in all, leave the gates below them, which are named in both, their size. */
const MOST_BOXES = 1;
const MOST_LETTERS = 2600;

/** Whether gates say so much that they stay on their page in small type only. */
function isCrowded(all: readonly BothGate[]): boolean {
  const boxes = all.filter((gate) => isBox(gate) && gate.second !== '').length;
  const letters = all.flatMap(({ what, note, limit, found, source, second }) => [
    what,
    note,
    limit,
    found,
    source,
    second,
  ]);
  return boxes > MOST_BOXES || letters.join('').length > MOST_LETTERS;
}

/** Cautions of which the box of a stop says all, with its rule. */
const BOXED: Readonly<Record<string, string>> = {
  'caution.asbestos': 'house.asbestos',
  'caution.lead': 'house.lead',
};

/** Whether a box that stops work says all of a caution already. */
const isBoxed = ({ limits }: Packet, code: string): boolean =>
  limits.some(({ rule }) => rule === BOXED[code]);

function whoAndWhat({ packet, say, date }: SheetContext) {
  const { job, spec } = packet;
  return {
    owner: job.owner,
    place: job.place,
    from: date(spec.work.from),
    onlyToilet: spec.access.onlyToilet ? say('sheet.job-sheet.onlyToilet') : '',
    onlyExit: spec.access.onlyExit
      ? say('sheet.job-sheet.onlyExit', { deadEnd: isDeadEnd(spec) ? 'yes' : 'no' })
      : '',
  };
}

/** Tile, joint, gap, undercut where there is one, direction: what everyone on the floor must have in his head. */
function fiveFigures(context: SheetContext) {
  const { packet, say, figure, length, units } = context;
  const tile = packet.spec.tiles[0]!;
  const surface = packet.surfaces[0]!;
  const { pattern } = packet.spec.surfaces[0]!;
  const gap = Math.min(...surface.edges.map((edge) => edge.gap));
  const options = (id: string, label: string) => ({ id, label, ...units, say });
  return {
    tile: {
      name: tile.name,
      long: figure(tile.length),
      wide: figure(tile.width),
      drawing: drawTile(tile, options('five-tile', tile.name)).svg,
    },
    joint: {
      figure: figure(packet.spec.joint),
      drawing: drawJointFullSize(packet.spec.joint, options('five-joint', length(packet.spec.joint))).svg,
    },
    gap: figure(gap),
    widerGaps: packet.surfaces
      .map((one) => widerGaps(context, one))
      .filter((one) => one !== '')
      .join(' · '),
    ...(isUndercut(packet) ? { undercut: figure(packet.heights.undercut) } : {}),
    direction: say('sheet.job-sheet.direction', {
      pattern: say(`pattern.${surface.pattern.name}`),
      angle: String(Math.round(pattern.turnedDeg)),
      what: typeof pattern.along === 'string' ? 'wall' : 'line',
      line: lineWords(surface, pattern.along, say),
    }),
  };
}
