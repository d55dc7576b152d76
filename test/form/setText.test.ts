import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { insertText, removeText, renameText, setText } from '../../src/form/setText.ts';

const written = [
  '# measured twice',
  'title: Hall   # as the owner calls it',
  'lot: 0417',
  'shed: {paint: "yes", mine: [1.50, ~]}   # nobody else knows this key',
  'floor:',
  '  # the long wall first',
  '  walls:',
  '    A-B: {read: 9 ft 2 1/4 in, seen: focal}',
  '    B-C: [6 ft, 6 ft 1/8 in]',
  '',
].join('\n');

/** Lines of one text that the other lacks. */
const fresh = (text: string, before: string): readonly string[] =>
  text.split('\n').filter((line) => !before.split('\n').includes(line));

describe('a job file that was written by hand', () => {
  test('changes in no other character when one value is written over', () => {
    const changed = setText(written, ['floor', 'walls', 'A-B', 'read'], '9 ft 3 in');
    expect(changed).toBe(written.replace('9 ft 2 1/4 in', '9 ft 3 in'));
  });

  test.each<[string, (text: string) => string, readonly string[]]>([
    ['a key is added', (text) => setText(text, ['joint'], '3/16 in'), ['joint: 3/16 in']],
    [
      'a list is written',
      (text) => setText(text, ['floor', 'walls', 'B-C'], ['1 m', '2 m']),
      ['    B-C: [1 m, 2 m]'],
    ],
    [
      'keys are added on the way',
      (text) => setText(text, ['site', 'water'], 'yard'),
      ['site:', '  water: yard'],
    ],
    ['a key is taken out', (text) => removeText(text, ['floor', 'walls', 'B-C'], 0), []],
    [
      'a key gets another name',
      (text) => renameText(text, ['floor', 'walls', 'B-C'], 'B-D'),
      ['    B-D: [6 ft, 6 ft 1/8 in]'],
    ],
    [
      'a key is put behind another',
      (text) => insertText(text, ['floor', 'walls', 'A-B'], 'X-Y', null),
      ['    X-Y:'],
    ],
  ])('keeps its comments, its spelling and the keys nobody knows when %s', (_, change, lines) => {
    const changed = change(written);
    expect(fresh(changed, written).map((line) => line.trimEnd())).toEqual(lines);
    expect(changed).toContain('lot: 0417');
    expect(changed.match(/#/g)).toHaveLength(4);
  });
});

describe('a value is quoted where YAML would read it as something else', () => {
  test.each([
    '9 ft 2 1/4 in',
    'R. Okafor',
    '2027-03-01',
    '[maybe]',
    'a: b',
    '# 4',
    'two\nlines',
    '"so"',
    '- a',
    '*',
    '',
  ])('%j', (value) => {
    expect(parse(setText('a: {b: x}', ['a', 'b'], value), { schema: 'failsafe' })).toEqual({
      a: { b: value },
    });
  });

  test('and nowhere else', () => {
    expect(setText('a: x', ['a'], '11 13/16 in x 23 7/8 in')).toBe('a: 11 13/16 in x 23 7/8 in');
  });
});

test('a name that is taken or empty changes nothing', () => {
  for (const name of ['B-C', '  '])
    expect(renameText(written, ['floor', 'walls', 'A-B'], name)).toBe(written);
});

test('where a value stands in the way of a key, nothing changes', () => {
  expect(setText('floor: none', ['floor', 'walls', 'A-B'], '1 m')).toBe('floor: none');
});
