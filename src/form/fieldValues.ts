import { readYaml } from '../job/yaml/readYaml.ts';
import type { AskedKind } from '../sheets/measuring/AskedField.ts';

type Tree = unknown;

/** Kinds whose answer is a list of lengths or sizes, or one of them. */
export const listKinds: ReadonlySet<AskedKind> = new Set(['lengths', 'sizes', 'flatness']);

const asText = (value: unknown): string | undefined =>
  typeof value === 'string' || typeof value === 'number' || typeof value === 'boolean'
    ? String(value)
    : undefined;

/** Texts of a list; undefined where one of its items is no single value. */
function textsOf(value: unknown): readonly string[] | undefined {
  if (!Array.isArray(value)) return undefined;
  const texts = value.map(asText);
  return texts.every((text) => text !== undefined) ? (texts as string[]) : undefined;
}

const SIDE = /^\s*(plain|undercut|post)\b\s*(.*)$/i;

function sideOf(text: string): readonly string[] | undefined {
  const found = SIDE.exec(text);
  return found ? [found[1]!.toLowerCase(), found[2]!] : undefined;
}

/**
 * The parts of an answer; empty where there is none, undefined where the form cannot show it.
 *
 * @example
 * fieldValues('9 ft', 'lengths') //=> ['9 ft']
 * fieldValues('undercut 1/2 in', 'doorSide') //=> ['undercut', '1/2 in']
 * fieldValues([['1 in', '2 in'], ['3 in', '4 in']], 'points') //=> ['1 in, 2 in', '3 in, 4 in']
 */
export function fieldValues(value: Tree, kind: AskedKind): readonly string[] | undefined {
  if (value === undefined || value === null || value === '') return [];
  const one = asText(value);
  if (kind === 'doorSide') return one === undefined ? undefined : sideOf(one);
  if (kind === 'walls' || kind === 'point') return textsOf(value);
  if (kind === 'points') {
    const points = Array.isArray(value) ? value.map(textsOf) : [];
    return points.length > 0 && points.every((point) => point !== undefined)
      ? points.map((point) => point!.join(', '))
      : undefined;
  }
  if (listKinds.has(kind)) return one === undefined ? textsOf(value) : [one];
  return one === undefined ? undefined : [one];
}

/** The values of a job file; undefined where it cannot be read as YAML. */
export function treeOf(text: string): unknown {
  return readYaml(text).value;
}
