import type { PacketSurface } from '../packet/Packet.ts';
import type { Zone } from '../zones/Zone.ts';
import { clipMarks } from './clipMarks.ts';
import type { Drawing, DrawOptions } from './Drawing.ts';
import { matchLines } from './matchLines.ts';
import type { PlanPart, PlanParts } from './PlanParts.ts';
import { asShown, holds, type PartOnPaper, partOnPaper } from './partOnPaper.ts';
import { penSvg } from './penSvg.ts';
import { placeNames } from './placeNames.ts';
import { cornerLetters } from './roomMarks.ts';
import { toPaper } from './Scale.ts';
import { specks } from './specks.ts';
import { takenBy } from './takenBy.ts';
import { beginArrow, wayOutWithin } from './zoneArrows.ts';
import { shafts, zoneMarks, zonePieces } from './zoneMarks.ts';
import { endsOf, namedWhere, zoneNames } from './zoneNames.ts';

/** A part of a zone's plan, and of the pieces that are named on it those that miss name or number, and those that bear them not themselves. */
export interface ZonePartDrawing extends Drawing {
  readonly unnamed: readonly string[];
  readonly aside: readonly string[];
  readonly counted: boolean;
}

function marksOf(
  surface: PacketSurface,
  zone: Zone,
  part: PlanPart,
  { scale, paper, window, shown }: PartOnPaper,
  say: DrawOptions['say'],
) {
  // An outline that is cut off is open lines too: only the arrow's are shafts.
  const out = wayOutWithin(surface, zone, scale, shown);
  const drawn = [
    ...clipMarks([...zoneMarks(surface, zone, scale), ...cornerLetters(surface, scale)], shown),
    ...out,
  ];
  const marks = [...drawn, ...matchLines(part, window, say, { ...takenBy(drawn), paper })];
  return { marks, taken: [...takenBy(marks).boxes, ...shafts(out)] };
}

/**
 * One part of a zone's plan at a scale at which its pieces bear their names and the numbers of their cuts. A piece that lies across a match
 * line is drawn on both pages, and named where its middle is.
 */
export function drawZonePart(
  surface: PacketSurface,
  zone: Zone,
  parts: PlanParts,
  part: PlanPart,
  options: DrawOptions,
): ZonePartDrawing {
  const placed = partOnPaper(surface, parts, part);
  const { scale, paper, shown, own } = placed;
  const { marks, taken } = marksOf(surface, zone, part, placed, options.say);
  const pieces = zonePieces(surface, zone);
  const onPaper = (ring: PacketSurface['outline']) => ring.map((point) => toPaper(scale, point));
  const ground = {
    paper: shown,
    outline: onPaper(surface.outline),
    bare: surface.obstacles.map(({ ring }) => onPaper(ring)),
    taken,
    lines: takenBy(marks, true).lines,
    must: new Set([...endsOf(zone), ...specks(pieces, scale)]),
  };
  const { requests, counted } = zoneNames(pieces, zone, scale, ground);
  // The ends are named on the zone's own page: where they lie on none of the parts they are not asked for here.
  const ends = endsOf(zone);
  const mine = requests
    .filter(({ name, pole }) => holds(own, pole) && (!ends.includes(name) || holds(shown, pole)))
    .map((one) => asShown(one, shown));
  const names = placeNames(mine, ground);
  const here = new Set(mine.map(({ name }) => name));
  const words = [...taken, ...takenBy(names.marks).boxes];
  const begin = here.has(zone.first) ? beginArrow({ surface, zone, scale }, words) : [];
  const { right: widthMm, top: heightMm } = paper;
  const frame = { id: options.id, label: options.label, widthMm, heightMm, ratio: scale.ratio };
  const named = namedWhere(
    pieces.filter(({ id }) => here.has(id)),
    names,
  );
  return { ...penSvg([...marks, ...begin, ...names.marks], frame), counted, ...named };
}
