import { drawPattern } from '../../drawing/index.ts';
import type { TileSpec } from '../../job/Job.ts';
import {
  M2_PER_SQ_FT,
  type Notation,
  printDecimal,
  printLength,
  type System,
  TICKS_PER_INCH,
  TICKS_PER_MM,
  type Ticks,
} from '../../measure/index.ts';
import { jointShareOf, makePattern, type PatternShare, patternShares } from '../../pattern/index.ts';
import type { Say } from '../SheetView.ts';
import { type GalleryPattern, galleryPatterns } from './galleryPatterns.ts';

/** A pattern as the gallery's page shows it; all text is ready. */
export interface GalleryEntry {
  readonly id: string;
  readonly title: string;
  readonly svg: string;
  readonly written: string;
  /** Which sizes close, and what part of the floor is joint. */
  readonly closes: string;
  readonly joints: string;
  readonly tiles: readonly {
    readonly name: string;
    readonly size: string;
    readonly count: string;
    readonly ofTiles: string;
    readonly ofFloor: string;
  }[];
}

/** The unit that tiles are made of, and the joint. */
const EXAMPLE: Readonly<Record<System, { readonly unit: Ticks; readonly joint: Ticks }>> = {
  inches: { unit: 8 * TICKS_PER_INCH, joint: TICKS_PER_INCH / 8 },
  mm: { unit: 200 * TICKS_PER_MM, joint: 3 * TICKS_PER_MM },
};

/** Every pattern that a floor can be laid in, in words of one language. */
export function makeGallery(say: Say, units: Notation): readonly GalleryEntry[] {
  const { unit, joint } = EXAMPLE[units.system];
  return galleryPatterns(unit, joint).map((one) => entryOf(one, joint, { say, units }));
}

interface Voice {
  readonly say: Say;
  readonly units: Notation;
}

function entryOf({ name, written, spec, tiles }: GalleryPattern, joint: Ticks, voice: Voice): GalleryEntry {
  const { say, units } = voice;
  const pattern = makePattern(spec, tiles, joint);
  const title = say(`gallery.name.${name}`);
  const length = (ticks: Ticks) => printLength(ticks, units);
  const [first, last] = [tiles[0]!, tiles.at(-1)!];
  return {
    id: name,
    title,
    svg: drawPattern(pattern, { id: `pattern-${name}`, label: title }).svg,
    written: `pattern: ${written}`,
    closes: say(`gallery.closes.${name}`, {
      length: length(first.length),
      width: length(first.width),
      size: length(last.length),
      unit: length(EXAMPLE[units.system].unit),
    }),
    joints: say('gallery.joints', {
      joint: length(joint),
      share: printDecimal(100 * jointShareOf(pattern), 1, units.decimal),
    }),
    tiles: patternShares(pattern).map((share) =>
      tileRow(tiles.find(({ key }) => key === share.tile)!, share, voice),
    ),
  };
}

function tileRow(tile: TileSpec, { perM2, ofTiles, ofFloor }: PatternShare, { say, units }: Voice) {
  const percent = (share: number) => `${printDecimal(100 * share, 1, units.decimal)} %`;
  const count = units.system === 'inches' ? 100 * M2_PER_SQ_FT * perM2 : perM2;
  return {
    name: say(`gallery.tile.${tile.key}`),
    size: sizeOf(tile, units),
    count: printDecimal(count, 1, units.decimal),
    ofTiles: percent(ofTiles),
    ofFloor: percent(ofFloor),
  };
}

/** Both extents; one for what is as long as it is wide. */
function sizeOf({ length, width }: TileSpec, units: Notation): string {
  const [long, wide] = [length, width].map((ticks) => printLength(ticks, units));
  return `${long} × ${wide}`;
}
