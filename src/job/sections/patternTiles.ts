import type { OwnRepeat, PatternName, PatternSpec, TileSpec } from '../Job.ts';
import type { Path } from '../shape/Trouble.ts';
import { checkColors } from './checkColors.ts';
import { type Notes, noteDefault, trouble } from './Notes.ts';
import { PATTERN_KEYS, type PatternKey } from './patternKeys.ts';
import { tileKey } from './tileKey.ts';

interface Given {
  readonly tile?: string | undefined;
  readonly tiles?: readonly string[] | undefined;
  readonly checker?: readonly [string, string] | undefined;
}

type Tiles = Pick<PatternSpec, 'tile' | 'tiles' | 'checker'>;

/** The tiles that a pattern takes, by name; in a checker the first color stands for both. */
export function patternTiles(
  name: PatternName,
  given: Given,
  own: OwnRepeat | undefined,
  tiles: readonly TileSpec[],
  path: Path,
  notes: Notes,
): Tiles {
  const colorOf = (i: 0 | 1) => tileKey(given.checker?.[i], tiles, [...path, 'checker', i], notes);
  const checker = given.checker && ([colorOf(0), colorOf(1)] as const);
  const shapes: PatternKey['shapes'] = PATTERN_KEYS.find((one) => one.name === name)?.shapes ?? ['rectangle'];
  const keys = own
    ? [...new Set(own.places.map(({ tile }) => tile))]
    : keysFor(shapes.length, given, checker, tiles, path, notes);
  if (checker) checkColors(checker, keys[0], tiles, path, notes);
  checkShapes(name, own ? keys.map(() => 'rectangle' as const) : shapes, keys, tiles, path, notes);
  return {
    tile: keys[0] ?? '',
    ...(keys.length > 1 && { tiles: keys }),
    ...(checker && { checker }),
  };
}

function keysFor(
  count: number,
  given: Given,
  checker: Tiles['checker'],
  tiles: readonly TileSpec[],
  path: Path,
  notes: Notes,
): readonly string[] {
  if (given.tiles) {
    const keys = given.tiles.map((one, i) => tileKey(one, tiles, [...path, 'tiles', i], notes));
    if (keys.length !== count)
      trouble(notes, 'patternTiles', [...path, 'tiles'], { count, has: keys.length }, true);
    return keys;
  }
  if (count === 1) return [checker?.[0] ?? tileKey(given.tile, tiles, [...path, 'tile'], notes)];
  // The second color of a checker lies in the place of the first, so it is no tile of the pattern by itself.
  const own = tiles.filter(({ key }) => key === checker?.[0] || key !== checker?.[1]);
  if (own.length < count && tiles.length > 0)
    trouble(notes, 'patternTiles', path, { count, has: own.length }, true);
  const keys = own.slice(0, count).map(({ key }) => key);
  noteDefault(notes, [...path, 'tiles'], keys.join(', '));
  return keys;
}

function checkShapes(
  name: PatternName,
  shapes: PatternKey['shapes'],
  keys: readonly string[],
  tiles: readonly TileSpec[],
  path: Path,
  notes: Notes,
): void {
  keys.forEach((key, i) => {
    const tile = tiles.find((one) => one.key === key);
    const wanted = shapes[i];
    if (!tile || !wanted || (tile.shape?.kind ?? 'rectangle') === wanted) return;
    const pattern = PATTERN_KEYS.find((one) => one.name === name)?.key ?? name;
    trouble(notes, 'patternShape', path, {
      pattern,
      tile: tile.name,
      wanted,
      is: tile.shape?.kind ?? 'rectangle',
    });
  });
  const hands = keys.flatMap((key) => {
    const shape = tiles.find((one) => one.key === key)?.shape;
    return shape?.kind === 'chevron' ? [shape.hand] : [];
  });
  if (name === 'chevron' && hands.length === 2 && hands[0] === hands[1])
    trouble(notes, 'chevronHands', path, { hand: hands[0]! }, true);
}
