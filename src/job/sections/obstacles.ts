import * as z from 'zod';
import type { Point } from '../../geometry/index.ts';
import type { FromWall, Meets, ObstacleSpec, WallSpec } from '../Job.ts';
import { leaf } from '../shape/leaf.ts';
import type { Path } from '../shape/Trouble.ts';
import { fromKeys, withFrom } from '../shape/withFrom.ts';
import { length, size } from '../values/length.ts';
import { pair } from '../values/pair.ts';
import { text } from '../values/text.ts';
import { wallMiddle } from '../values/wallMiddle.ts';
import { edgeFacts, edgeShape, type Gaps, meetsWords } from './edge.ts';
import { type Notes, noteDefault, trouble } from './Notes.ts';
import { wallName } from './names.ts';

const coordinate = leaf(length, 'Distance from one of the two walls.');

const sideMiddle = leaf(
  wallMiddle,
  'Where the side to the next corner is curved: how far its middle stands off a straight line, out of the obstacle or in.',
);

const obstacleSchema = withFrom(
  {
    circle: leaf(size, 'Diameter as measured; the gap comes on top.').optional(),
    rectangle: leaf(pair, 'Size along the first wall named x size square to it.').optional(),
    polygon: z
      .array(z.tuple([coordinate, coordinate, sideMiddle.optional()]))
      .min(3)
      .meta({
        description:
          'Corners once round, each as distances from the two walls; third where the side to the next is curved, how far its middle stands off: 6 in out.',
      })
      .optional(),
    from: z
      .tuple([leaf(text, 'First wall.'), leaf(text, 'Second wall.')])
      .meta({ description: 'The two walls that the points of a polygon are measured from.' })
      .optional(),
    ...edgeShape,
  },
  leaf(
    length,
    'Distance from this wall, square to it: of the centre of a circle, of the near corner of a rectangle.',
  ),
  'Something that stands in the floor, placed from two walls: `from A-B: 15 in`.',
);

/** Obstacles of a surface by name. */
export const obstaclesSchema = z
  .record(z.string(), obstacleSchema)
  .meta({ description: 'What stands in the floor, each under a name of your own, such as flange.' });

type Given = z.output<typeof obstacleSchema>;
type Shape = ObstacleSpec['shape'];

const NOWHERE: FromWall = { wall: '', distance: Number.NaN };

/** The two walls that something is placed from, with its distances. */
export function fromWalls(
  given: Readonly<Record<string, unknown>>,
  walls: readonly WallSpec[],
  path: Path,
  notes: Notes,
): readonly [FromWall, FromWall] {
  const places = fromKeys<number>(given).map(({ key, name, value }) => ({
    wall: wallName(name, walls, [...path, key], notes, true),
    distance: value,
  }));
  const [first = NOWHERE, second = NOWHERE] = places;
  if (places.length !== 2) trouble(notes, 'twoWalls', path, { count: places.length }, true);
  else if (first.wall === second.wall) trouble(notes, 'sameWall', path, { wall: first.wall }, true);
  return [first, second];
}

function polygon(
  given: Given,
  corners: NonNullable<Given['polygon']>,
  walls: readonly WallSpec[],
  path: Path,
  notes: Notes,
): Shape {
  const [first, second] = given.from ?? ['', ''];
  if (!given.from) trouble(notes, 'missing', [...path, 'from'], { key: 'from' }, true);
  const names = [first, second].map((name, i) => wallName(name, walls, [...path, 'from', i], notes));
  if (given.from && names[0] === names[1]) trouble(notes, 'sameWall', path, { wall: names[0]! }, true);
  const points = corners.map(([x, y]): Point => [x, y]);
  const rises = corners.map(([, , middle = 0]) => middle);
  return {
    kind: 'polygon',
    walls: [names[0]!, names[1]!],
    points,
    ...(rises.some((rise) => rise !== 0) && { rises }),
  };
}

function buildShape(given: Given, walls: readonly WallSpec[], path: Path, notes: Notes): Shape {
  const shapes = ['circle', 'rectangle', 'polygon'].filter((kind) => given[kind] !== undefined);
  if (shapes.length !== 1) trouble(notes, 'oneShape', path, { count: shapes.length }, true);
  if (given.polygon) return polygon(given, given.polygon, walls, path, notes);
  const from = fromWalls(given, walls, path, notes);
  if (given.rectangle) return { kind: 'rectangle', along: given.rectangle[0], out: given.rectangle[1], from };
  return { kind: 'circle', diameter: given.circle ?? Number.NaN, from };
}

/** What an obstacle is, by the last word of its name that tells (`sink cabinet` is a cabinet, `floor drain` a drain), else by its shape. */
function meetsByName(name: string, kind: Shape['kind']): Meets {
  const words = name.toLowerCase().split(/[^a-z]+/);
  const told = words.reverse().flatMap((word) => meetsWords.filter((meets) => meets === word));
  return told[0] ?? (kind === 'circle' ? 'pipe' : 'column');
}

/** The obstacles of a surface. */
export function buildObstacles(
  given: z.output<typeof obstaclesSchema> | undefined,
  walls: readonly WallSpec[],
  gaps: Gaps,
  at: Path,
  notes: Notes,
): readonly ObstacleSpec[] {
  return Object.entries(given ?? {}).map(([name, obstacle]) => {
    const path = [...at, name];
    const shape = buildShape(obstacle, walls, path, notes);
    const meets = meetsByName(name, shape.kind);
    if (!obstacle.meets) noteDefault(notes, [...path, 'meets'], meets);
    // The closet's foot covers the cut round its flange.
    const usual = { meets, seen: (obstacle.meets ?? meets) === 'flange' ? 'hidden' : 'plain' } as const;
    return { name, shape, ...edgeFacts(obstacle, usual, gaps, path, notes) };
  });
}
