import { describe, expect, test } from 'vitest';
import { countNodes } from '../../src/site/pdfNodes.ts';

/** The parts of a tagged PDF that name table heads, in the browser's words: a head, a cell of it, another head. */
const pdf = (first: string, second: string, names: string) =>
  `<</ID (${first})>> <</Headers [(${first})]>> <</ID (${second})>> <</Limits [${names.slice(0, 14)} ${names.slice(-22, -8)}]\n/Names [${names}]>>`;

const early = pdf('node00000067', 'node00000068', '(node00000067) 131 0 R (node00000068) 133 0 R');
const late = pdf('node00000081', 'node00000004', '(node00000004) 133 0 R (node00000081) 131 0 R');

describe('the parts of a tagged PDF', () => {
  test('are named alike, in whatever order the browser reached them, and nothing moves', () => {
    expect(countNodes(late)).toBe(countNodes(early));
    expect(countNodes(late)).toHaveLength(late.length);
  });

  // ISO 32000-1, 7.9.6: names in order, limits the first and the last of them.
  test('are found again in a name tree that is in order', () => {
    expect(countNodes(late)).toContain(
      '/Limits [(node00000001) (node00000002)]\n/Names [(node00000001) 131 0 R (node00000002) 133 0 R]',
    );
  });
});
