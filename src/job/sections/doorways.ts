import * as z from 'zod';
import type { DoorSide, DoorwaySpec, WallSpec } from '../Job.ts';
import { leaf } from '../shape/leaf.ts';
import type { Path } from '../shape/Trouble.ts';
import { fromKeys, withFrom } from '../shape/withFrom.ts';
import { doorSide, type SideWish } from '../values/doorSide.ts';
import { length, size } from '../values/length.ts';
import { oneOf } from '../values/oneOf.ts';
import { pair } from '../values/pair.ts';
import { text } from '../values/text.ts';
import { yesNo } from '../values/yesNo.ts';
import { edgeFacts, edgeShape, type Gaps, type GivenEdge } from './edge.ts';
import { type Notes, noteDefault, orDefault, trouble } from './Notes.ts';
import { wallName } from './names.ts';

const beyond = oneOf(['carpet', 'wood', 'tile', 'vinyl', 'concrete', 'later']);

const sideForm = z.strictObject({
  undercut: leaf(size, 'How far the tile slides under.').optional(),
  post: leaf(pair, 'Width along the wall x depth into it.').optional(),
  ...edgeShape,
});

type SideForm = z.output<typeof sideForm>;
interface GivenSide extends GivenEdge {
  readonly wish: SideWish;
}

function wishOf({ undercut, post }: SideForm): SideWish {
  if (undercut !== undefined) return { kind: 'undercut', tuck: undercut };
  return post ? { kind: 'post', width: post[0], depth: post[1] } : { kind: 'plain' };
}

const side = (hand: string) =>
  z
    .union([
      leaf(doorSide, `The ${hand} side as you face the door.`).transform((wish): GivenSide => ({ wish })),
      sideForm.transform((given): GivenSide => ({ wish: wishOf(given), ...given })),
    ])
    .meta({
      description: `The ${hand} side as you stand in the room and face the door: plain, undercut <how far the tile slides in>, or post <width x depth>.`,
    });

const { meets: _, ...lineShape } = edgeShape;

const doorwaySchema = withFrom(
  {
    in: leaf(text, 'The wall it is in, such as D-A.'),
    clear: leaf(size, 'Clear width between the two sides.'),
    wall: leaf(size, 'Thickness of the wall.').optional(),
    'door line': leaf(length, 'From the face of the wall to the line under the closed door.').optional(),
    left: side('left').optional(),
    right: side('right').optional(),
    beyond: leaf(beyond, 'Floor behind the door: carpet, wood, tile, vinyl, concrete or later.').optional(),
    'only exit': leaf(yesNo, 'Whether this is the only way out of the room.').optional(),
    ...lineShape,
  },
  leaf(length, 'Distance of the clear opening from this corner.'),
  'A doorway. `from D: 9 in` is the distance of the clear opening from corner D.',
);

/** Doorways of a surface by name. */
export const doorwaysSchema = z
  .record(z.string(), doorwaySchema)
  .meta({ description: 'Doorways, each under a name of your own, such as hall.' });

type Given = z.output<typeof doorwaySchema>;

function buildSide(given: GivenSide | undefined, gaps: Gaps, path: Path, notes: Notes): DoorSide {
  if (!given) noteDefault(notes, path, 'plain');
  const wish = given?.wish ?? { kind: 'plain' };
  const edge: GivenEdge = given ?? {};
  if (wish.kind === 'plain') return { ...wish, facts: edgeFacts(edge, { meets: 'jamb' }, gaps, path, notes) };
  if (wish.kind === 'post') return { ...wish, facts: edgeFacts(edge, { meets: 'post' }, gaps, path, notes) };
  const gap = edge.gap ?? gaps.gap;
  // At least 1/8 in of the tile must stay under the casing, or the gap shows.
  const usual = {
    meets: 'casing',
    seen: 'hidden',
    touch: false,
    gapMax: Math.max(gap, wish.tuck - 1016),
  } as const;
  return { ...wish, facts: edgeFacts(edge, usual, gaps, path, notes) };
}

function fromCorner(given: Given, wall: WallSpec | undefined, path: Path, notes: Notes) {
  const all = fromKeys<number>(given);
  const [first, second] = all;
  const figures = { from: wall?.from ?? '', to: wall?.to ?? '' };
  if (!first || second)
    trouble(
      notes,
      'doorwayFrom',
      second ? [...path, second.key] : path,
      { ...figures, count: all.length },
      true,
    );
  const corner =
    wall && [wall.from, wall.to].find((name) => name.toLowerCase() === first?.name.toLowerCase());
  if (wall && first && corner === undefined)
    trouble(notes, 'notAnEnd', [...path, first.key], { ...figures, name: first.name, wall: wall.id }, true);
  return { fromCorner: corner ?? first?.name ?? '', from: first?.value ?? Number.NaN };
}

function buildDoorway(
  name: string,
  given: Given,
  walls: readonly WallSpec[],
  gaps: Gaps,
  only: boolean,
  at: Path,
  notes: Notes,
): DoorwaySpec {
  const path = [...at, name];
  const wall = wallName(given.in, walls, [...path, 'in'], notes);
  const found = walls.find(({ id }) => id === wall);
  const thickness = orDefault(
    notes,
    given.wall,
    [...path, 'wall'],
    { inches: '4 3/4 in', mm: '120 mm' },
    size,
  );
  const doorLine = given['door line'] ?? Math.round(thickness / 2);
  if (given['door line'] === undefined) noteDefault(notes, [...path, 'door line'], 'middle of the wall');
  if (doorLine > thickness) trouble(notes, 'doorLineOutside', [...path, 'door line']);
  return {
    name,
    wall,
    ...fromCorner(given, found, path, notes),
    clear: given.clear,
    wallThickness: thickness,
    doorLine,
    left: buildSide(given.left, gaps, [...path, 'left'], notes),
    right: buildSide(given.right, gaps, [...path, 'right'], notes),
    beyond: orDefault(notes, given.beyond, [...path, 'beyond'], 'later', beyond),
    line: edgeFacts(given, { meets: 'doorway', touch: false }, gaps, path, notes),
    onlyExit: orDefault(notes, given['only exit'], [...path, 'only exit'], only ? 'yes' : 'no', yesNo),
  };
}

/** The doorways of a surface; a doorway that is alone is the only way out. */
export function buildDoorways(
  given: z.output<typeof doorwaysSchema> | undefined,
  walls: readonly WallSpec[],
  gaps: Gaps,
  path: Path,
  notes: Notes,
): readonly DoorwaySpec[] {
  const all = Object.entries(given ?? {});
  return all.map(([name, doorway]) =>
    buildDoorway(name, doorway, walls, gaps, all.length === 1, path, notes),
  );
}
