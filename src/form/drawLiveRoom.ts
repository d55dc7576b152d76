import { boxOf } from '../drawing/boxes.ts';
import type { Mark, Spot } from '../drawing/Mark.ts';
import { trimmed } from '../drawing/markBounds.ts';
import { penSvg } from '../drawing/penSvg.ts';
import { type Scale, toPaper } from '../drawing/Scale.ts';
import { angleTo, flag, move } from '../drawing/signs.ts';
import { path, text } from '../drawing/text.ts';
import { printLength } from '../measure/index.ts';
import type { LiveRoom, LiveWall } from './LiveRoom.ts';

/** Space for the room itself, in mm: small, so that words are large on a telephone. */
const space = { width: 72, height: 48 } as const;

/** How far outside a wall its length stands, and the letter of a corner; how far inside its question mark, in mm. */
const away = { length: 4.5, letter: 4.5, flag: 5 } as const;

function scaleOf({ corners, doors }: LiveRoom): Scale {
  const box = boxOf([...corners.map(({ at }) => at), ...doors.flat()]);
  const [width, height] = [Math.max(1, box.right - box.left), Math.max(1, box.top - box.bottom)];
  return {
    ratio: 1,
    paperMmPerTick: Math.min(space.width / width, space.height / height),
    turn: 0,
    origin: [box.left, box.bottom],
    spot: [0, 0],
  };
}

const middle = ([a, b]: Spot, [c, d]: Spot): Spot => [(a + c) / 2, (b + d) / 2];

/** The wall itself; dashed where nobody has read it. */
function face({ faces, state }: LiveWall, scale: Scale): readonly Mark[] {
  return faces.map((points) =>
    path(
      points.map((point) => toPaper(scale, point)),
      state === 'unread' ? 'fullTile' : 'wall',
    ),
  );
}

/** Its length on the outside, and a question mark on a wall that the others contradict. */
function words({ from, to, state, used }: LiveWall, scale: Scale, { system }: LiveRoom): readonly Mark[] {
  const [a, b] = [toPaper(scale, from), toPaper(scale, to)];
  const out = angleTo(a, b) - Math.PI / 2;
  const upright = Math.abs(b[1] - a[1]) > Math.abs(b[0] - a[0]);
  const at = move(middle(a, b), out, away.length);
  const shown = used === undefined ? '' : printLength(used, system, { feet: true, finest: 508 });
  return [
    ...(shown === '' ? [] : [text(at, shown, { turn: upright ? 90 : 0, clear: 'none' })]),
    ...(state === 'suspect' ? flag(move(middle(a, b), out, -away.flag), '?') : []),
  ];
}

/** The letter of a corner, outside of the angle that its walls make. */
function letters({ corners }: LiveRoom, scale: Scale): readonly Mark[] {
  const spots = corners.map(({ at }) => toPaper(scale, at));
  return corners.map(({ name }, i) => {
    const here = spots[i]!;
    const [before, after] = [spots.at(i - 1)!, spots[(i + 1) % spots.length]!];
    const [one, other] = [angleTo(before, here) - Math.PI / 2, angleTo(here, after) - Math.PI / 2];
    const out: Spot = [Math.cos(one) + Math.cos(other), Math.sin(one) + Math.sin(other)];
    return text(move(here, Math.atan2(out[1], out[0]), away.letter), name, {
      weight: 700,
      size: 13,
      clear: 'none',
    });
  });
}

/**
 * The room as it stands in the form: walls and their lengths, dashed where they are not read yet, doors, obstacles, diagonals, and a
 * question mark at each reading that the others contradict. An SVG without a scale.
 */
export function drawLiveRoom(room: LiveRoom, label: string): string {
  const scale = scaleOf(room);
  const on = (points: readonly (readonly [number, number])[]) => points.map((point) => toPaper(scale, point));
  const diagonals = room.diagonals.flatMap(({ from, to, suspect }): readonly Mark[] => {
    const [a, b] = [toPaper(scale, from), toPaper(scale, to)];
    return [
      path([a, b], 'dimension'),
      ...(suspect ? flag(move(a, angleTo(a, b), Math.hypot(b[0] - a[0], b[1] - a[1]) * 0.35), '?') : []),
    ];
  });
  const { marks, ...size } = trimmed([
    ...diagonals,
    ...room.obstacles.map(
      ({ ring }): Mark => ({ mark: 'area', rings: [on(ring)], line: 'fixture', fill: 'paper' }),
    ),
    ...room.doors.map((points) => path(on(points), 'opening')),
    ...room.walls.flatMap((wall) => face(wall, scale)),
    ...room.walls.flatMap((wall) => words(wall, scale, room)),
    ...letters(room, scale),
  ]);
  return penSvg(marks, { id: 'live', label, ratio: null, ...size }).svg;
}
