import { drawMeasured } from '../../drawing/index.ts';
import type { PacketSurface } from '../../packet/Packet.ts';
import type { AdjustedCorner, AdjustedReading } from '../../room/Room.ts';
import { pageSpace } from '../drawingSpace.ts';
import { readAgain } from '../readAgain.ts';
import type { SheetPage } from '../Sheet.ts';
import type { SheetContext } from '../SheetContext.ts';
import { signedLength } from '../signedLength.ts';
import type { Block, Row } from './Block.ts';
import { nextText, readingName, roughly, testText, togetherTexts } from './readingName.ts';

/** Height of the drawing of the room, in mm: what a page leaves beside the tables of a room of four corners. */
const DRAWING_MM = 112;

function readingRow(context: SheetContext, reading: AdjustedReading, suspects: ReadonlySet<string>): Row {
  const { say, longLength } = context;
  const { smallestSlip } = reading;
  return {
    name: readingName(context, reading.id),
    cells: [
      reading.read.map((one) => longLength(one)).join(' · '),
      longLength(reading.used),
      signedLength(reading.correction, context.length),
      testText(context, reading),
      smallestSlip === null ? say('sheet.measuring.anySlip') : roughly(context, smallestSlip),
    ],
    ...(suspects.has(reading.id) ? { marked: true as const } : {}),
  };
}

function readings(context: SheetContext, { adjustment }: PacketSurface): Block {
  const { say } = context;
  const suspects = new Set(adjustment.suspects.flatMap(({ ids }) => ids));
  const heads = ['reading', 'read', 'used', 'correction', 'test', 'slip'];
  return {
    kind: 'table',
    table: {
      head: heads.map((key) => say(`sheet.measuring.${key}`)),
      rows: adjustment.readings.map((reading) => readingRow(context, reading, suspects)),
      filled: true,
    },
  };
}

function leanText(context: SheetContext, { lean, sd }: Pick<AdjustedCorner, 'lean' | 'sd'>): string {
  if (!lean) return '–';
  const by = roughly(context, Math.abs(lean.by));
  if (by === roughly(context, 0))
    return context.say(`sheet.measuring.${sd === null ? 'assumedSquare' : 'square'}`);
  const way = lean.by > 0 ? 'wide' : 'narrow';
  return context.say('sheet.measuring.leans', {
    wall: lean.wall,
    by,
    way,
    over: roughly(context, lean.over),
  });
}

function corners(context: SheetContext, { adjustment }: PacketSurface): Block {
  const { say, number } = context;
  const rows = adjustment.corners.map(
    (corner): Row => ({
      name: corner.name,
      cells: [
        `${number(corner.angleDeg, 2)}°`,
        leanText(context, corner),
        corner.sd === null ? '?' : roughly(context, 2 * corner.sd),
      ],
    }),
  );
  const heads = ['corner', 'angle', 'lean', 'out'];
  return {
    kind: 'table',
    table: { head: heads.map((key) => say(`sheet.measuring.${key}`)), rows, filled: true },
  };
}

/** Walls whose middle was read: by how much it stands in the room or out of it. */
function middles({ packet, say, length }: SheetContext, surface: PacketSurface): readonly string[] {
  const walls = packet.spec.surfaces.find(({ name }) => name === surface.name)?.walls ?? [];
  return walls.flatMap(({ id, rise }) =>
    rise === undefined
      ? []
      : say('sheet.measuring.bowed', { wall: id, by: length(Math.abs(rise)), way: rise > 0 ? 'out' : 'in' }),
  );
}

/** What was found on site, as one line. */
function site({ packet, say }: SheetContext): readonly Block[] {
  const found = packet.spec.site ?? {};
  const lines = Object.entries(found).map(([key, value]) => `${say(`ask.${key}`)}: ${value}.`);
  return lines.length === 0
    ? []
    : [
        { kind: 'heading', text: say('sheet.measuring.site') },
        { kind: 'lines', lines },
      ];
}

const note = (text: string): Block => ({ kind: 'note', text });

function measured(context: SheetContext, surface: PacketSurface, i: number): SheetPage {
  const { packet, say, units } = context;
  const { adjustment } = surface;
  const { paper } = packet.spec.print;
  const space = { widthMm: pageSpace(paper, 'portrait').widthMm, heightMm: DRAWING_MM };
  const label = say('sheet.measuring.roomDrawing', { name: surface.name });
  const drawing = drawMeasured(surface, { id: `measured-${i + 1}`, label, ...units, say, space });
  const again = readAgain(context, surface).map((text): Block => ({ kind: 'note', text, strong: true }));
  return {
    floor: surface.name,
    figures: { shape: 'filled' },
    bundles: ['office', 'packet'],
    ...(drawing.ratio ? { scale: `1:${drawing.ratio}` } : {}),
    data: {
      blocks: [
        { kind: 'drawing', svg: drawing.svg },
        ...again,
        ...nextText(context, adjustment).map(note),
        { kind: 'lines', lines: [...togetherTexts(context, adjustment), ...middles(context, surface)] },
        readings(context, surface),
        corners(context, surface),
        ...(i === 0 ? site(context) : []),
      ] satisfies readonly Block[],
    },
  };
}

/** What was measured of each floor, what the readings say about each other, and what to read again. */
export function measuredRooms(context: SheetContext): readonly SheetPage[] {
  return context.packet.surfaces.map((surface, i) => measured(context, surface, i));
}
