import type { Mark, Spot, Step } from './Mark.ts';
import { circle, rectangle } from './shapes.ts';
import { path } from './text.ts';

/** Small pictures of things, 14 mm square with the origin at the lower left. */
const floor: readonly Mark[] = [path([[0, 1], [14, 1]], 'thick')]; // biome-ignore format: two ends

const line = (...spots: Spot[]): Mark => path(spots, 'slash');
const ring = (...steps: Step[]): Mark => ({ mark: 'area', rings: [steps], line: 'slash', fill: 'paper' });

function drop(x: number, y: number, size = 1.5): Mark {
  return ring([x, y + 2.2 * size], [x - 0.85 * size, y + 0.45 * size], { centre: [x, y], radius: size, from: Math.PI * 0.85, to: Math.PI * 2.15 }); // biome-ignore format: a drop on a line
}

const bottle = (mark: readonly Mark[]): readonly Mark[] => [
  ring([4, 1], [10, 1], [10, 8], [8, 10], [8, 12.5], [6, 12.5], [6, 10], [4, 8]),
  ...mark,
];

const mop: readonly Mark[] = [
  ...floor,
  path([[7, 4], [11, 13]], 'thick'), // biome-ignore format: two ends
  ring([3, 1], [11, 1], [9, 4], [5, 4]),
  line([5, 1], [6, 4]),
  line([7, 1], [7, 4]),
  line([9, 1], [8, 4]),
];

const cloth: readonly Mark[] = [
  ...floor,
  ring([2, 1.5], [9, 1.5], [11, 3.5], [4, 3.5]),
  line([4, 6], [7, 5], [10, 6]),
  drop(11.5, 6),
];

const brush = (wire: boolean): readonly Mark[] => [
  ...floor,
  rectangle([2, 6], 10, 2.5, { line: 'thick', fill: 'paper' }),
  ...[3, 5, 7, 9, 11].map((x) =>
    wire ? line([x, 6], [x - 0.7, 4.5], [x + 0.7, 3], [x, 1.5]) : line([x, 6], [x, 1.5]),
  ),
];

const chair: readonly Mark[] = [
  ...floor,
  path([[3, 1], [3, 13]], 'thick'), // biome-ignore format: two ends
  path([[3, 6.5], [9, 6.5], [9, 1]], 'thick'), // biome-ignore format: three ends
  line([14, 4], [10.5, 4]),
  line([11.7, 5], [10.5, 4], [11.7, 3]),
];

const calendarDrop: readonly Mark[] = [
  rectangle([2, 1], 10, 10, { line: 'slash', fill: 'paper' }),
  path([[2, 8.5], [12, 8.5]], 'thick'), // biome-ignore format: two ends
  line([4.5, 10], [4.5, 12.5]),
  line([9.5, 10], [9.5, 12.5]),
  drop(7, 3.6, 1.3),
];

const dropOnJoint: readonly Mark[] = [
  rectangle([0, 1], 5.5, 4, { line: 'slash', fill: 'paper' }),
  rectangle([8.5, 1], 5.5, 4, { line: 'slash', fill: 'paper' }),
  rectangle([5.5, 1], 3, 3.6, { fill: 'hidden' }),
  drop(7, 8),
];

const corner: readonly Mark[] = [
  path([[3, 13], [3, 3], [13, 3]], 'thick'), // biome-ignore format: three ends
  circle([9.5, 9], 2.6, { line: 'slash', fill: 'paper' }),
  line([7.6, 7.1], [4.2, 4.2]),
];

const mat: readonly Mark[] = [
  ...floor,
  rectangle([1.5, 1.4], 11, 2, { line: 'thick', fill: 'hidden' }),
  ...[4, 8].map((x): Mark => ring([x, 4.5], [x + 2.4, 4.5], [x + 2.4, 8], [x + 0.4, 8])),
];

const squeegee: readonly Mark[] = [
  path([[7, 5], [7, 13]], 'thick'), // biome-ignore format: two ends
  path([[1.5, 5], [12.5, 5]], 'thick'), // biome-ignore format: two ends
  drop(4, 1.8, 0.9),
  drop(9.5, 1.8, 0.9),
];

const heat: readonly Mark[] = [
  ...floor,
  ...[3, 7, 11].map((x) => line([x, 3], [x - 1, 5.5], [x + 1, 8], [x, 10.5], [x + 0.8, 12])),
];

const bag: readonly Mark[] = [
  ring([3, 1], [11, 1], [11.5, 9.5], [9, 12], [5, 12], [2.5, 9.5]),
  line([5, 12], [7, 9.8], [9, 12]),
  circle([7, 5.5], 2, { line: 'slash' }),
];

const bucket: readonly Mark[] = [
  ring([3.5, 1], [10.5, 1], [12, 8], [2, 8]),
  line([2, 8], [4, 12], [10, 12], [12, 8]),
  drop(7, 3.6, 1.2),
];

/** Marks on a bottle: an acid's drops eat a line, a wax's shine, a plain circle for a neutral cleaner. */
const acid = bottle([line([5, 4], [6, 5], [7, 4], [8, 5], [9, 4]), drop(12.4, 2.4, 0.9)]);
const wax = bottle([line([5.2, 3], [8.8, 7]), line([5.2, 5], [7, 7])]);
const neutral = bottle([circle([7, 5], 1.8, { line: 'slash' })]);

/** Pictures by the code of the line of the care sheet they stand beside. */
export const carePictures: Readonly<Record<string, readonly Mark[]>> = {
  'care.do.firstWash': bucket,
  'care.do.neutral': neutral,
  'care.do.dropTest': dropOnJoint,
  'care.do.squeegee': squeegee,
  'care.do.standing': squeegee,
  'care.do.wipe': cloth,
  'care.do.corners': corner,
  'care.do.grit': mat,
  'care.dont.acid': acid,
  'care.dont.acidStone': acid,
  'care.dont.acidEpoxy': acid,
  'care.dont.acidStoneEpoxy': acid,
  'care.dont.sealEarly': calendarDrop,
  'care.dont.heat': heat,
  'care.dont.wax': wax,
  'care.dont.abrasive': brush(true),
  'care.dont.drag': chair,
  'care.dont.oldGrout': bag,
  'care.dont.oldGroutEpoxy': bag,
};

/** For a line that has no picture of its own. */
export const plainCare: readonly Mark[] = mop;
