import { describe, expect, test } from 'vitest';
import { placeProblems } from '../../src/job/placeProblems.ts';

const ONE = 'title: a\nfloor:\n  walls:\n    A-B: 8 ft\n  doorways: {hall: {in: A-B}}\n';
const SEVERAL = 'title: a\nfloors:\n  pantry:\n    walls:\n      A-B: 8 ft\n';

describe('a problem that a later step finds is placed in the job file', () => {
  test.each([
    ['at the value of a wall', ONE, ['floor', 'walls', 'A-B'], 4, 10],
    ['at a doorway', ONE, ['floor', 'doorways', 'hall'], 5, 20],
    ['at the key, where what belongs to it begins a line below', ONE, ['floor'], 2, 1],
    ['at the nearest key that is there, where the path goes on', ONE, ['floor', 'corners', 'A'], 2, 1],
    ['under floors, where the job has several', SEVERAL, ['pantry', 'walls', 'A-B'], 5, 12],
  ])('%s', (_name, text, path, line, column) => {
    const problem = { code: 'crossing', path, found: 'A-B', figures: {} };
    expect(placeProblems([problem], text, 'job.yaml')).toMatchObject([
      { file: 'job.yaml', line, column, found: 'A-B' },
    ]);
  });

  test('one that has its line keeps it', () => {
    const problem = { code: 'crossing', path: ['floor'], found: '', figures: {}, line: 9, column: 9 };
    expect(placeProblems([problem], ONE, 'job.yaml')).toEqual([problem]);
  });
});
