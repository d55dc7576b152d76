import * as z from 'zod';
import type { PatternSpec, TileSpec, WallSpec } from '../Job.ts';
import { leaf } from '../shape/leaf.ts';
import { likelyFigures } from '../shape/likely.ts';
import { bad, good, type Reader } from '../shape/Reader.ts';
import type { Path } from '../shape/Trouble.ts';
import { turn } from '../values/numbers.ts';
import { offset } from '../values/offset.ts';
import { text } from '../values/text.ts';
import { yesNo } from '../values/yesNo.ts';
import { type Notes, noteDefault, orDefault, trouble } from './Notes.ts';
import { findName, wallName } from './names.ts';

type Offset = NonNullable<PatternSpec['offset']>;

/**
 * A pattern in one word or two: `straight` or `running 1/3`.
 *
 * @example
 * patternWord.read('running 1/3') //=> { ok: true, value: { running: { numerator: 1, denominator: 3 } } }
 * patternWord.read('straight') //=> { ok: true, value: {} }
 * patternWord.read('herring').code //=> 'notAPattern'
 */
export const patternWord: Reader<{ readonly running?: Offset }> = {
  read: (value) => {
    const [, word, rest] = /^(straight|running) *(.*)$/i.exec(String(value).trim()) ?? [];
    if (word?.toLowerCase() === 'straight' && rest === '') return good({});
    const reading = word?.toLowerCase() === 'running' && rest ? offset.read(rest) : undefined;
    return reading?.ok ? good({ running: reading.value }) : bad('notAPattern');
  },
  standIn: {},
  json: { type: 'string', examples: ['straight', 'running 1/3'] },
};

const layShape = {
  turned: leaf(turn, "Degrees from the wall to the tile's length, counter-clockwise.").optional(),
  along: leaf(text, 'Wall that the pattern is square to; the first wall unless told.').optional(),
  tile: leaf(text, 'Name of the tile; the first one unless told.').optional(),
};

/** `straight` takes nothing, or how it lies. */
const straight = z
  .union([z.null(), z.strictObject(layShape)])
  .meta({ description: 'Joints run through both ways. It may stand alone: {straight, turned: 45}.' })
  .optional();

const patternForm = z
  .strictObject({
    straight,
    running: leaf(offset, 'Shift of each course: a part of the module, or a length.').optional(),
    alternating: leaf(yesNo, 'Courses go back and forth instead of on and on.').optional(),
    ...layShape,
  })
  .transform(({ straight: lay, ...given }) => ({ ...given, ...lay, straight: lay !== undefined }));

/** The pattern of a surface. */
export const patternSchema = z
  .union([
    leaf(patternWord, 'straight or running 1/3.').transform(
      (form): z.output<typeof patternForm> => ({ ...form, straight: form.running === undefined }),
    ),
    patternForm,
  ])
  .meta({ description: 'How the tile lies: straight, {running: 1/3}, {straight, turned: 45} …' });

function tileKey(name: string | undefined, tiles: readonly TileSpec[], path: Path, notes: Notes): string {
  const keys = tiles.map(({ key }) => key);
  if (name === undefined) return keys[0] ?? '';
  const found = findName(name, keys);
  if (found === undefined && keys.length > 0)
    trouble(notes, 'unknownTile', path, { name, tiles: keys.join(', '), ...likelyFigures(name, keys) });
  return found ?? name;
}

/** The pattern with its defaults; `straight`, square to the first wall, where the file has none. */
export function buildPattern(
  given: z.output<typeof patternSchema> | undefined,
  tiles: readonly TileSpec[],
  walls: readonly WallSpec[],
  path: Path,
  notes: Notes,
): PatternSpec {
  if (!given) noteDefault(notes, path, 'straight');
  if (given && (given.running !== undefined) === given.straight) trouble(notes, 'onePattern', path, {}, true);
  const along =
    given?.along === undefined
      ? (walls[0]?.id ?? '')
      : wallName(given.along, walls, [...path, 'along'], notes);
  const common = {
    tile: tileKey(given?.tile, tiles, [...path, 'tile'], notes),
    turnedDeg: given?.turned ?? 0,
    along,
  };
  if (!given?.running) return { name: 'straight', ...common };
  const alternating = orDefault(notes, given.alternating, [...path, 'alternating'], 'no', yesNo);
  return {
    name: 'running',
    ...common,
    offset: given.running,
    stepping: alternating ? 'alternating' : 'stepping',
  };
}
