import type { Drawing, DrawOptions } from './Drawing.ts';
import { firstFree } from './firstFree.ts';
import type { Mark, Spot } from './Mark.ts';
import { trimmed } from './markBounds.ts';
import { type MeasureRoom, type MeasureShape, measureRoom } from './measureRooms.ts';
import { penSvg } from './penSvg.ts';
import { angleTo, arrowHead, move } from './signs.ts';
import { takenBy } from './takenBy.ts';
import { path, sizes, text } from './text.ts';

/** Room to write a length, in mm. */
const blank = 22;

/** Opening of the door in the last wall, from the corner where the walk begins, in mm. */
const door = { from: 5, width: 13, depth: 3 };

const between = (a: Spot, b: Spot, share: number): Spot => [
  a[0] + (b[0] - a[0]) * share,
  a[1] + (b[1] - a[1]) * share,
];

/** The name of a wall and a line to write its length on, outside the room. */
function wallBlank(a: Spot, b: Spot, name: string): readonly Mark[] {
  const turn = Math.abs(a[0] - b[0]) < 0.01 ? 90 : 0;
  const along = turn === 90 ? Math.PI / 2 : 0;
  const at = move(between(a, b, 0.5), angleTo(a, b) - Math.PI / 2, 5);
  const line = move(move(at, along + Math.PI / 2, -2.2), along, 5);
  return [
    text(move(at, along, -blank / 2 - 1), name, { size: sizes.note, weight: 700, turn, clear: 'all' }),
    path([move(line, along, -blank / 2), move(line, along, blank / 2)], 'thin'),
  ];
}

/** The last wall with the door in it, just before the walk begins again. */
function doorWall(a: Spot, b: Spot): readonly Mark[] {
  const back = angleTo(b, a);
  const out = back + Math.PI / 2;
  const [near, far] = [move(b, back, door.from), move(b, back, door.from + door.width)];
  const [nearLine, farLine] = [move(near, out, door.depth), move(far, out, door.depth)];
  return [
    path([a, far], 'wall'),
    path([near, b], 'wall'),
    path([far, farLine], 'wall'),
    path([near, nearLine], 'wall'),
    path([nearLine, farLine], 'opening'),
  ];
}

function walls({ corners, walls }: MeasureRoom): readonly Mark[] {
  return walls.flatMap((name, i) => {
    const [a, b] = [corners[i]!.at, corners[(i + 1) % corners.length]!.at];
    const last = i === walls.length - 1;
    const free = last ? move(b, angleTo(b, a), door.from + door.width) : b;
    return [...(last ? doorWall(a, b) : [path([a, b], 'wall')]), ...wallBlank(a, free, name)];
  });
}

/** The letters of the corners outside the room, or in the corner that sticks out into it. */
function letters({ corners }: MeasureRoom): readonly Mark[] {
  return corners.map(({ name, at }, i) => {
    const [before, after] = [corners.at(i - 1)!.at, corners[(i + 1) % corners.length]!.at];
    const away = move(move(at, angleTo(before, at), 3.4), angleTo(after, at), 3.4);
    return text(away, name, { weight: 700, clear: 'all' });
  });
}

/** Which way one walks: an arrow inside the first wall. */
function walk({ corners }: MeasureRoom): readonly Mark[] {
  const [a, b] = [corners[0]!.at, corners[1]!.at];
  const angle = angleTo(a, b);
  const at = move(move(a, angle, 9), angle + Math.PI / 2, 3);
  const tip = move(at, angle, 10);
  return [path([at, tip], 'slash'), arrowHead(tip, angle, 3)];
}

/** Diagonals, each with its name where nothing else lies. */
function diagonals(room: MeasureRoom, before: readonly Mark[]): readonly Mark[] {
  const at = (name: string) => room.corners.find((corner) => corner.name === name)!.at;
  const all = room.diagonals.map((id) => ({ id, a: at(id[0]!), b: at(id.at(-1)!) }));
  const lines = all.map(({ a, b }) => path([a, b], 'fullTile'));
  const marks: Mark[] = [...lines];
  for (const { id, a, b } of all) {
    const shares = [0.62, 0.38, 0.7, 0.3, 0.78, 0.22, 0.55, 0.45, 0.84, 0.16];
    const tries = shares.map((share) => text(between(a, b, share), id, { weight: 700, clear: 'all' }));
    const others = lines.filter((line) => line.steps[0] !== a || line.steps[1] !== b);
    const { boxes } = takenBy([...before, ...marks]);
    marks.push(firstFree(tries, { boxes, lines: takenBy(others).lines }));
  }
  return marks;
}

/** A blank room for the first visit: letters round it, a line to write each wall's length on, the diagonals by name. */
export function drawMeasureForm(shape: MeasureShape, options: DrawOptions): Drawing {
  const room = measureRoom(shape);
  const round = [...walls(room), ...letters(room), ...walk(room)];
  const { marks, ...size } = trimmed([...round, ...diagonals(room, round)]);
  return penSvg(marks, { id: options.id, label: options.label, ratio: null, ...size });
}
