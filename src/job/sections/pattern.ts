import * as z from 'zod';
import type { PatternSpec, TileSpec } from '../Job.ts';
import { leaf } from '../shape/leaf.ts';
import { bad, good, type Reader } from '../shape/Reader.ts';
import type { Path } from '../shape/Trouble.ts';
import { grouping } from '../values/grouping.ts';
import { turn } from '../values/numbers.ts';
import { offset } from '../values/offset.ts';
import { patternLine } from '../values/patternLine.ts';
import { text } from '../values/text.ts';
import { yesNo } from '../values/yesNo.ts';
import { type Around, buildAlong } from './buildAlong.ts';
import { type Notes, noteDefault, orDefault, trouble } from './Notes.ts';
import { buildOwnPattern, ownPatternSchema } from './ownPattern.ts';
import { PATTERN_KEYS } from './patternKeys.ts';
import { patternTiles } from './patternTiles.ts';

type Offset = NonNullable<PatternSpec['offset']>;

/** A pattern by its name alone: `null` where it has nothing more to say, else how many tiles turn as one. */
type Named = { readonly [Key in string]?: Offset | number | null };

/**
 * A pattern in a few words: `straight`, `running 1/3`, `herringbone`, `double herringbone`, `two squares` …
 *
 * @example
 * patternWord.read('running 1/3') //=> { ok: true, value: { running: { numerator: 1, denominator: 3 } } }
 * patternWord.read('straight') //=> { ok: true, value: {} }
 * patternWord.read('double herringbone') //=> { ok: true, value: { herringbone: 2 } }
 * patternWord.read('Two squares') //=> { ok: true, value: { 'two squares': null } }
 * patternWord.read('herring').code //=> 'notAPattern'
 */
export const patternWord: Reader<Named> = {
  read: (value) => {
    const words = String(value).trim().toLowerCase().replace(/ +/g, ' ');
    if (words === 'straight') return good({});
    const [, shift] = /^running (.*)$/.exec(words) ?? [];
    const reading = shift === undefined ? undefined : offset.read(shift);
    if (reading?.ok) return good({ running: reading.value });
    const found = PATTERN_KEYS.find(
      ({ key }) => words === key || (key === 'herringbone' && words.endsWith(` ${key}`)),
    );
    if (!found) return bad('notAPattern');
    const group = words === found.key ? undefined : grouping.read(words.slice(0, -found.key.length));
    if (!group) return good({ [found.key]: null });
    return group.ok ? good({ [found.key]: group.value }) : bad('notAPattern');
  },
  standIn: {},
  json: { type: 'string', examples: ['straight', 'running 1/3', ...PATTERN_KEYS.map(({ key }) => key)] },
};

const layShape = {
  turned: leaf(turn, "Degrees from the wall to the tile's length, counter-clockwise.").optional(),
  along: leaf(
    patternLine,
    'What the pattern is square to: a wall, shared taper, or a line from place to place; the first wall unless told.',
  ).optional(),
  tile: leaf(text, 'Name of the tile; the first one unless told.').optional(),
  tiles: z
    .array(leaf(text, 'Name of a tile.'))
    .meta({
      description: 'Names of the tiles of a pattern of several, in its own order; as listed unless told.',
    })
    .optional(),
  checker: z
    .tuple([leaf(text, 'Tile of the first color.'), leaf(text, 'Tile of the second.')])
    .meta({
      description:
        "Two tiles of one size and shape that take turns in the place of the pattern's first tile.",
    })
    .optional(),
};

/** `straight` takes nothing, or how it lies. */
const straight = z
  .union([z.null(), z.strictObject(layShape)])
  .meta({ description: 'Joints run through both ways. It may stand alone: {straight, turned: 45}.' })
  .optional();

const grouped = (description: string) =>
  z
    .union([z.null(), leaf(grouping, description)])
    .meta({ description })
    .optional();
const alone = (description: string) => z.null().meta({ description }).optional();

const patternForm = z
  .strictObject({
    straight,
    running: leaf(offset, 'Shift of each course: a part of the module, or a length.').optional(),
    alternating: leaf(yesNo, 'Courses go back and forth instead of on and on.').optional(),
    herringbone: grouped('single or double; single unless told.'),
    basketweave: grouped('Tiles side by side in a square; 2 unless told.'),
    'two squares': alone('A small square at a corner of each large one: large, small.'),
    windmill: alone('Four rectangles round a square: rectangle, square.'),
    'three sizes': alone(
      'Squares of two units and of one, and a rectangle of one by two: large, rectangle, small.',
    ),
    'four sizes': alone('Two by three units, two by two, one by two and one by one, in that order.'),
    hexagon: alone('Hexagons in rows, points up; turned: 90 lays the flats level.'),
    'octagon and dot': alone('Octagons with square dots: octagon, dot.'),
    rhombus: alone('Rhombi point to point in rows.'),
    chevron: alone('Slanting tiles tip to tip: two tiles, one of each hand.'),
    'penny round': alone('Round tiles in rows, each half a tile along.'),
    own: ownPatternSchema.optional(),
    ...layShape,
  })
  .transform(({ straight: lay, ...given }) => ({ ...given, ...lay, straight: lay !== undefined }));

type Form = z.output<typeof patternForm>;

/** The pattern of a surface. */
export const patternSchema = z
  .union([
    leaf(patternWord, 'straight, running 1/3, herringbone …').transform((named): Form => {
      const given = named as Partial<Form>;
      return { ...given, straight: namesIn({ ...given, straight: false }).length === 0 };
    }),
    patternForm,
  ])
  .meta({ description: 'How the tile lies: straight, {running: 1/3}, {herringbone, turned: 45} …' });

/** The keys of a form that name a pattern. */
function namesIn(given: Pick<Form, 'straight'>): string[] {
  const others = ['running', 'own', ...PATTERN_KEYS.map(({ key }) => key)];
  return [
    ...(given.straight ? ['straight'] : []),
    ...others.filter((key) => (given as Partial<Form>)[key as 'own'] !== undefined),
  ];
}

/** What the name of the pattern brings with it. */
function named(
  given: Form | undefined,
  tiles: readonly TileSpec[],
  path: Path,
  notes: Notes,
): Pick<PatternSpec, 'name' | 'offset' | 'stepping' | 'group' | 'own'> {
  if (given?.own) return { name: 'own', own: buildOwnPattern(given.own, tiles, [...path, 'own'], notes) };
  const found = PATTERN_KEYS.find(({ key }) => given && given[key as 'herringbone'] !== undefined);
  if (found) {
    const group = given?.[found.key as 'herringbone'] ?? found.group;
    return { name: found.name, ...(group !== undefined && { group }) };
  }
  if (!given?.running) return { name: 'straight' };
  const alternating = orDefault(notes, given.alternating, [...path, 'alternating'], 'no', yesNo);
  return { name: 'running', offset: given.running, stepping: alternating ? 'alternating' : 'stepping' };
}

/** The pattern with its defaults; `straight`, square to the first wall, where the file has none. */
export function buildPattern(
  given: Form | undefined,
  tiles: readonly TileSpec[],
  around: Around,
  path: Path,
  notes: Notes,
): PatternSpec {
  if (!given) noteDefault(notes, path, 'straight');
  // What could not be read has no names at all, and that is told already.
  if (given?.straight !== undefined && namesIn(given).length !== 1)
    trouble(notes, 'onePattern', path, {}, true);
  const { name, ...rest } = named(given, tiles, path, notes);
  const laid = patternTiles(name, given ?? {}, rest.own, tiles, path, notes);
  const tile = tiles.find(({ key }) => key === laid.tile);
  return {
    name,
    ...laid,
    turnedDeg: given?.turned ?? 0,
    along: buildAlong(given?.along, around, tile, [...path, 'along'], notes),
    ...rest,
  };
}
