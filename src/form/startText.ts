import type { System } from '../measure/index.ts';
import { freeCorner } from './addCorner.ts';

/** Shapes that a room may begin with. */
export type StartShape = 'rectangle' | 'L' | 'T' | 'other';

export const startShapes: readonly StartShape[] = ['rectangle', 'L', 'T', 'other'];

/** Corners of each, and those that jut into the room; walked from A with the room on the left. */
const shapes: Readonly<
  Record<StartShape, { readonly corners: number; readonly jutting: readonly string[] }>
> = {
  rectangle: { corners: 4, jutting: [] },
  L: { corners: 6, jutting: ['D'] },
  T: { corners: 8, jutting: ['D', 'G'] },
  other: { corners: 5, jutting: [] },
};

const letters = (count: number): readonly string[] =>
  Array.from({ length: count }).reduce<readonly string[]>((names) => [...names, freeCorner(names)], []);

/**
 * A job file with nothing answered yet but the shape of the room, its units and the day. Five corners stand for any other count: one
 * adds to them and takes away.
 *
 * @example
 * startText('rectangle', 'mm', '2027-03-01').includes('A-B:') //=> true
 */
export function startText(shape: StartShape, system: System, date: string): string {
  const { corners, jutting } = shapes[shape];
  const names = letters(corners);
  const walls = names.map((name, i) => `    ${name}-${names[(i + 1) % corners]}:`);
  const angles = jutting.map((name) => `${name}: 270`).join(', ');
  return [
    'title:',
    `revision: {letter: A, date: ${date}}`,
    `print: {units: ${system}}`,
    'tile:',
    '  field:',
    '    read:',
    'joint:',
    'floor:',
    '  walls:',
    ...walls,
    ...(angles === '' ? [] : [`  angles: {${angles}}`]),
    '',
  ].join('\n');
}
