import { drawJointFullSize, drawTile } from '../drawing/index.ts';
import { isDeadEnd } from '../job/isDeadEnd.ts';
import type { SurfaceSpec, TileSpec } from '../job/Job.ts';
import type { Packet, PacketSurface } from '../packet/Packet.ts';
import { type BothGate, bothGates, isBox } from './bothGates.ts';
import { bothTongues } from './bothTongues.ts';
import { floorName } from './floorName.ts';
import { isLaid } from './isLaid.ts';
import { isUndercut } from './isUndercut.ts';
import { lineWords } from './lineWords.ts';
import type { Sheet } from './Sheet.ts';
import type { SheetContext } from './SheetContext.ts';
import { tileSize } from './tileSize.ts';
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
            .filter(({ code }) => !isBoxed(context.packet, code) && !(isCrowded(all) && onBase.has(code)))
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

/** Cautions that stand on the Base sheet, where what they warn of is pulled: a page that says much leaves them there. */
const onBase: ReadonlySet<string> = new Set(['caution.strips']);

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
  const [tile, others] = fieldTiles(context);
  const gap = Math.min(...packet.surfaces.flatMap(({ edges }) => edges.map((edge) => edge.gap)));
  const options = (id: string, label: string) => ({ id, label, ...units, say });
  return {
    tile: {
      name: tile.name,
      long: figure(tile.length),
      wide: figure(tile.width),
      drawing: drawTile(tile, options('five-tile', tile.name)).svg,
      others,
    },
    joint: {
      figure: figure(packet.spec.joint),
      drawing: drawJointFullSize(packet.spec.joint, options('five-joint', length(packet.spec.joint))).svg,
    },
    gap: figure(gap),
    widerGaps: ofFloors(packet, (one) => widerGaps(context, one, gap)),
    ...(isUndercut(packet) ? { undercut: figure(packet.heights.undercut) } : {}),
    direction: ofFloors(packet, (one) => directionOf(context, one)),
  };
}

/** The tile that the figures are of, that of the first floor's field; and of each floor that has another, which. */
function fieldTiles(context: SheetContext): readonly [TileSpec, readonly string[]] {
  const { tiles, surfaces } = context.packet.spec;
  const tileOf = ({ pattern }: SurfaceSpec) => tiles.find(({ key }) => key === pattern.tile) ?? tiles[0]!;
  const first = tileOf(surfaces[0]!);
  const others = surfaces.filter((one) => tileOf(one) !== first);
  return [first, others.map((one) => `${one.name}: ${tileOf(one).name}, ${tileSize(context, tileOf(one))}`)];
}

/** What there is to say of each floor, with its name where the job has several. */
function ofFloors({ surfaces }: Packet, words: (surface: PacketSurface) => string): string {
  return surfaces
    .map((one) => [floorName({ surfaces }, one.name), words(one)])
    .filter(([, said]) => said !== '')
    .map((parts) => parts.filter((part) => part !== '').join(': '))
    .join(' · ');
}

function directionOf({ packet, say }: SheetContext, surface: PacketSurface): string {
  const { pattern } = packet.spec.surfaces.find(({ name }) => name === surface.name)!;
  return say('sheet.job-sheet.direction', {
    pattern: say(`pattern.${surface.pattern.name}`),
    angle: String(Math.round(pattern.turnedDeg)),
    what: typeof pattern.along === 'string' ? 'wall' : 'line',
    line: lineWords(surface, pattern.along, say),
  });
}
