import { expect, test } from 'vitest';
import type { PrintedFile } from './PrintedPage.ts';
import { fontFaults, placeFaults, shortPages, sizeFaults } from './pageFaults.ts';

/** What holds of every printed file, whatever it says; `perFile` looks for faults in each file of the subject. */
export function wellSet(
  perFile: (find: (file: PrintedFile) => readonly string[]) => readonly string[],
): void {
  test('have no words that lie on others or off the paper, and no empty page', () => {
    expect(perFile(placeFaults)).toEqual([]);
  });

  test('have no page to which a sheet runs on for a few lines', () => {
    expect(perFile(shortPages)).toEqual([]);
  });

  test('have no type under 8 pt', () => {
    expect(perFile(sizeFaults)).toEqual([]);
  });

  test('use no font but the one that comes with the program', () => {
    expect(perFile(fontFaults)).toEqual([]);
  });
}
