import { drawCutIcon } from '../drawing/index.ts';
import { floorMark } from './floorMark.ts';
import { floorName } from './floorName.ts';
import { type HandMark, handMarks } from './handMarks.ts';
import { exampleOf, laterSaid, mateSaid, matesSaid } from './mateSaid.ts';
import type { Sheet } from './Sheet.ts';
import type { SheetContext } from './SheetContext.ts';
import { partsOfPage, savesPage } from './savesPage.ts';
import { sawnAfter } from './sawnAfter.ts';
import { sawnByTile, sharesTiles } from './sawnByTile.ts';
import { type FloorZone, type SawnPiece, sawnPieces } from './sawnPieces.ts';
import { tileMates } from './tileMates.ts';
import { zoneId } from './zoneId.ts';

/** Rows at the end of the list that stay on one page with the row before them. */
const LAST_ROWS = 3;

/**
 * What to saw, zone by zone and fence setting by fence setting, no offcut before its tile, and once more tile by tile; what has a card stands
 * on that.
 */
export const sawList: Sheet = {
  name: 'saw-list',
  for: 'setter',
  bundles: ['crew', 'packet'],
  speaks: 'crew',
  make: (context) => {
    const matesOf = tileMates(context.packet);
    const some = sawnPieces(context.packet, matesOf).flatMap((zone) => zoneCuts(context, zone));
    const { system: unit, paper } = context.packet.spec.print;
    // Rows at the end stay with those before: a page for a few of them is a page too many.
    const lines = some.flatMap(({ fences, marked }) => [
      ...fences.flatMap((fence) => fence.lines),
      ...marked,
    ]);
    const mates = matesSaid(context, lines);
    const tight = savesPage(some, paper, mates.length);
    const points = lines.some(({ marks }) => marks.some(({ atPoint }) => atPoint));
    const last = lines.slice(-LAST_ROWS).map(({ key }) => key);
    return [
      ...(some.length > 0
        ? [{ figures: { byTile: 'no' }, data: { zones: some, unit, tight, last, points, mates } }]
        : []),
      ...(sharesTiles(context)
        ? [
            {
              suffix: 'by-tile',
              figures: { byTile: 'yes' },
              bundles: ['packet'] as const,
              data: { ...sawnByTile(context), unit },
            },
          ]
        : []),
    ];
  },
};

/** The setting under which a piece stands: that of its first saw line; 0 where it is marked by hand. */
const settingOf = ({ cut }: SawnPiece) => cut.fences[0]?.saw ?? 0;

/** Pieces that stand under one key, in the order of the keys. */
function groupedBy<T>(
  pieces: readonly T[],
  keys: readonly number[],
  keyOf: (piece: T) => number,
): readonly T[][] {
  return keys.map((key) => pieces.filter((piece) => keyOf(piece) === key));
}

/**
 * Straight cuts of one zone gathered under their first fence setting, the widest first; then those that are marked by hand. What waits for an
 * offcut comes after its tile; what is set by the fence and waits for a tile that is marked by hand in a list of its own, after those.
 */
function zoneCuts(
  context: SheetContext,
  { surface, zone, pieces }: FloorZone & { readonly pieces: readonly SawnPiece[] },
) {
  const saws = [...new Set(pieces.map(settingOf))].filter((saw) => saw > 0).sort((a, b) => b - a);
  const settings = [...saws, 0];
  const turns = sawnAfter(groupedBy(pieces, settings, settingOf));
  const told = new Map<string, number>();
  const lists: { readonly saw: number; readonly lines: ReturnType<typeof sawLine>[] }[][] = [];
  turns.forEach(({ group, pieces: own }, i) => {
    if (i === 0 || turns[i - 1]!.group === saws.length) lists.push([]);
    const lines = linesOf(own).map((line) => sawLine(context, { surface, zone }, line, told));
    lists.at(-1)!.push({ saw: settings[group]!, lines });
  });
  return lists.map((list) => {
    const marked = list.filter(({ saw }) => saw === 0).flatMap(({ lines }) => lines);
    return {
      number: zone.number,
      floor: floorName(context.packet, surface.name),
      fences: list
        .filter(({ saw }) => saw > 0)
        .flatMap(({ saw, lines }) =>
          partsOfPage(lines, context.packet.spec.print.paper).map((part) => ({
            setting: context.figure(saw),
            lines: part,
          })),
        ),
      marked,
      from: measuredFrom(marked),
    };
  });
}

/** Pieces under one setting in lines, a cut each, no offcut before its tile. */
function linesOf(pieces: readonly SawnPiece[]): readonly (readonly SawnPiece[])[] {
  const cuts = [...new Set(pieces.map(({ cut }) => cut))];
  const lines = cuts.map((cut) => pieces.filter((piece) => piece.cut === cut));
  return sawnAfter(lines).map((turn) =>
    sawnAfter(turn.pieces.map((piece) => [piece])).flatMap((one) => one.pieces),
  );
}

/** What sizes that are marked by hand are measured from: edges of tiles, their points, or both. */
function measuredFrom(lines: readonly { readonly marks: readonly HandMark[] }[]): 'edge' | 'point' | 'both' {
  const marks = lines.flatMap((line) => line.marks);
  if (marks.every(({ atPoint }) => !atPoint)) return 'edge';
  return marks.every(({ atPoint }) => atPoint) ? 'point' : 'both';
}

/**
 * A line of pieces of one cut.
 *
 * @param told how often each cut has a line in this zone already: names and drawings are told apart by it.
 */
function sawLine(
  context: SheetContext,
  { surface, zone }: FloorZone,
  pieces: readonly SawnPiece[],
  told: Map<string, number>,
) {
  const { say, figure, packet, units } = context;
  const [{ cut, surface: floor }] = pieces as [SawnPiece];
  const tile = packet.spec.tiles.find(({ key }) => key === cut.tile)!;
  const marks = handMarks(context, cut, tile);
  const own = floor === surface ? '' : `${floorMark(packet, floor.name) || 'floor-1'}-`;
  const name = `${own}${cut.number}`;
  const before = told.get(name) ?? 0;
  told.set(name, before + 1);
  const id = `${name}${before > 0 ? `-${before + 1}` : ''}`;
  return {
    key: `${surface.name} ${zone.number} ${id}`,
    number: cut.number,
    pieces: pieces.map((piece) => piece.id),
    mates: pieces.map(({ mates }) => mateSaid(context, mates)),
    later: pieces.map((piece) => laterSaid(context, piece)),
    example: pieces.flatMap(({ mates }) => exampleOf(cut, mates))[0],
    icon: drawCutIcon(cut, tile, {
      id: `icon-${zoneId(packet, surface, zone)}-${id}`,
      label: say('sheet.saw-list.icon', {
        number: cut.number,
        fence: cut.fences.length > 0 ? 'yes' : marks.some(({ atPoint }) => atPoint) ? 'point' : 'no',
      }),
      ...units,
      say,
    }).svg,
    next: cut.fences.slice(1).map((fence) => figure(fence.saw)),
    marks,
    many: marks.length > 2,
  };
}
