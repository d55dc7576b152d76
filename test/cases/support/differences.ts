import { readLength } from '../../../src/measure/index.ts';

/** A sixty-fourth of an inch, in ticks: what `about` allows. */
const ABOUT = 127;

/**
 * Where what was found is not what a case expects, one line each; none when it is. Only what is expected is looked at.
 *
 * A length in words stands for its ticks; `about 4 mm` allows a sixty-fourth of an inch. Numbers agree to the digits that are
 * written. Of a list of maps each must fit one that was found; other lists agree from end to end.
 */
export function differences(found: unknown, expected: unknown, path = ''): string[] {
  if (Array.isArray(expected)) return listDifferences(found, expected, path);
  if (typeof expected === 'object' && expected !== null) {
    if (typeof found !== 'object' || found === null) return [tell(path, found, expected)];
    return Object.entries(expected).flatMap(([key, value]) =>
      differences((found as Record<string, unknown>)[key], value, path ? `${path} > ${key}` : key),
    );
  }
  return agrees(found, expected) ? [] : [tell(path, found, expected)];
}

function listDifferences(found: unknown, expected: readonly unknown[], path: string): string[] {
  if (!Array.isArray(found)) return [tell(path, found, expected)];
  const plain = expected.every((one) => typeof one !== 'object' || one === null);
  if (plain) {
    const same = found.length === expected.length && expected.every((one, i) => agrees(found[i], one));
    return same ? [] : [tell(path, found, expected)];
  }
  return expected
    .filter((one) => !found.some((other) => differences(other, one).length === 0))
    .map((one) => tell(path, found, one));
}

function agrees(found: unknown, expected: unknown): boolean {
  if (typeof found === 'number' && typeof expected === 'string') {
    const about = expected.startsWith('about ');
    const length = readLength(expected.replace(/^about /, '').replace(/^-/, ''));
    if (!length.ok) return false;
    const ticks = expected.replace(/^about /, '').startsWith('-') ? -length.ticks : length.ticks;
    return Math.abs(found - ticks) <= (about ? ABOUT : 0);
  }
  if (typeof found === 'number' && typeof expected === 'number') {
    const digits = `${expected}`.split('.')[1]?.length ?? 0;
    return Math.abs(found - expected) <= 0.5001 * 10 ** -digits;
  }
  return found === expected || (expected === null && found === undefined);
}

function tell(path: string, found: unknown, expected: unknown): string {
  return `${path}: found ${JSON.stringify(found)?.slice(0, 600)}, expected ${JSON.stringify(expected)}`;
}
