import type { Cut } from '../cuts/Cut.ts';
import { cardTurn, shownHand } from '../drawing/index.ts';
import type { Packet } from '../packet/Packet.ts';

const columns = [
  'surface',
  'cut',
  'tile',
  'kind',
  'hand',
  'pieces',
  'count',
  'what',
  'from',
  'exact_mm',
  'saw_mm',
];

/**
 * A field as RFC 4180 writes it. A text that a spreadsheet would take for a formula gets an apostrophe before it.
 *
 * @example
 * csvField('=1+1, "x"') //=> '"\'=1+1, ""x"""'
 */
export function csvField(value: string | number): string {
  if (typeof value === 'number') return String(value);
  const harmless = /^[=+\-@\t\r]/.test(value) ? `'${value}` : value;
  return /[",\r\n]/.test(harmless) ? `"${harmless.replaceAll('"', '""')}"` : harmless;
}

function tileOf({ spec }: Packet, cut: Cut) {
  return spec.tiles.find(({ key }) => key === cut.tile)!;
}

/** Every size of every cut, a line each, in millimetres. Lines end as RFC 4180 asks. */
export function cutsCsv(packet: Packet): string {
  const millimetres = (ticks: number) => Math.round((ticks / packet.ticksPerMm) * 1000) / 1000;
  const lines = packet.surfaces.flatMap((surface) =>
    surface.cuts.flatMap((cut) => {
      const first = [
        surface.name,
        cut.number,
        cut.tile,
        cut.kind,
        shownHand(cut, tileOf(packet, cut), cardTurn(cut, surface).turn),
        cut.pieces.join(' '),
        cut.pieces.length,
      ];
      return cut.sizes.map((size) => [
        ...first,
        size.what,
        size.from,
        millimetres(size.exact),
        millimetres(size.saw),
      ]);
    }),
  );
  return [columns, ...lines].map((line) => `${line.map(csvField).join(',')}\r\n`).join('');
}
