import type { Path, Trouble } from './Trouble.ts';
import { isUnread } from './Unread.ts';

/** The key that a path ends in; an item of a list goes by the list's key. */
function keyOf(path: Path): string {
  return String(path.findLast((name) => typeof name === 'string') ?? '');
}

/** Takes the marks of values that could not be read out of a parsed file: stand-ins go in, each mark becomes a trouble. */
export function settle<T>(parsed: T): { readonly value: T; readonly troubles: readonly Trouble[] } {
  const troubles: Trouble[] = [];
  const walk = (value: unknown, path: Path): unknown => {
    if (isUnread(value)) {
      const blank = value.code === 'missing';
      const figures = blank ? { key: keyOf(path) } : value.figures;
      troubles.push({ code: value.code, path, figures, atKey: blank });
      return value.standIn;
    }
    if (Array.isArray(value)) return value.map((item, index) => walk(item, [...path, index]));
    if (typeof value !== 'object' || value === null) return value;
    return Object.fromEntries(Object.entries(value).map(([key, item]) => [key, walk(item, [...path, key])]));
  };
  return { value: walk(parsed, []) as T, troubles };
}
