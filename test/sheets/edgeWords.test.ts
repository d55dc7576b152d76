import { describe, expect, test } from 'vitest';
import { edgeWords, endWords } from '../../src/sheets/edgeWords.ts';
import { demos, words } from './demos.ts';

const surface = demos.find(({ slug }) => slug === 'fernlea-boot-room')!.packet.surfaces[0]!;

describe('an edge in words', () => {
  test.each([
    ['A-B', 'A-B'],
    ['D-A.2', 'D-A'],
    ['hall:line', 'door line of hall'],
    ['hall:left.3', 'left side of hall doorway'],
    ['sink cabinet:3', 'face of sink cabinet'],
    ['flange', 'face of flange'],
    ['B-C flange', 'B-C, face of flange'],
    ['sink cabinet:2 sink cabinet:3', 'face of sink cabinet'],
    ['as the job says', 'as the job says'],
    ['', ''],
  ])('%s → %s', (id, said) => {
    expect(edgeWords(surface, id, words.say('en'))).toBe(said);
  });

  test.each([
    ['B', 'corner B'],
    ['hall:right', 'right side of hall doorway'],
    ['sink cabinet:2', 'corner of sink cabinet'],
  ])('the tape is hooked at %s: %s', (end, said) => {
    expect(endWords(surface, end, words.say('en'))).toBe(said);
  });
});
