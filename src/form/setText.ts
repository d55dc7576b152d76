import { type Document, isMap, isScalar, isSeq, type Node, Pair, type Scalar, YAMLMap, YAMLSeq } from 'yaml';
import type { Path } from '../job/shape/Trouble.ts';
import { keyText } from '../job/yaml/plainValue.ts';
import { keptText, scalarNode, scalarText, textOf } from './keptText.ts';

/** What may be written at a place: a value, a list of values or of lists, keys with values; nothing is written for an empty text. */
export type Written = string | null | readonly Written[] | { readonly [key: string]: Written };

const EMPTY = /^\s*$/;

/** Maps at this depth and deeper are written on one line: `hall: {in: D-A}`. */
const flowFrom = 3;

function nodeOf(value: Written, depth: number): Node {
  if (typeof value === 'string') return scalarNode(value);
  if (value === null) return scalarNode('') as Scalar;
  if (Array.isArray(value)) {
    const list = new YAMLSeq();
    list.flow = true;
    list.items = (value as readonly Written[]).map((item) => nodeOf(item, depth + 1));
    return list;
  }
  const map = new YAMLMap();
  map.flow = depth >= flowFrom;
  for (const [key, item] of Object.entries(value as Readonly<Record<string, Written>>))
    map.items.push(new Pair(scalarNode(key), item === null ? null : nodeOf(item, depth + 1)));
  return map;
}

const pairOf = (map: YAMLMap, key: string | number) =>
  map.items.findLast((pair) => keyText(pair.key) === String(key));

function put(map: YAMLMap, key: string | number, value: Written, depth: number): void {
  const node = value === null ? null : nodeOf(value, depth);
  const pair = pairOf(map, key);
  if (!pair) {
    map.items.push(new Pair(scalarNode(String(key)), node));
    return;
  }
  const before = pair.value;
  // A comment behind the old value belongs to the line, not to the value.
  if (isScalar(before) && isScalar(node) && before.comment) node.comment = before.comment;
  pair.value = node;
}

/** The map at a path; what is missing on the way, or has nothing behind it, becomes one. Undefined where a value stands in the way. */
function mapAt(doc: Document, path: Path): YAMLMap | undefined {
  if (!isMap(doc.contents)) {
    if (doc.contents !== null && !(isScalar(doc.contents) && doc.contents.value === null)) return undefined;
    doc.contents = new YAMLMap() as never;
  }
  let at = doc.contents as unknown as YAMLMap;
  for (const [depth, key] of path.entries()) {
    const next = pairOf(at, key)?.value;
    if (isMap(next)) at = next;
    else if (next === undefined || next === null || (isScalar(next) && next.value === null)) {
      put(at, key, {}, depth + 1);
      at = pairOf(at, key)!.value as YAMLMap;
    } else return undefined;
  }
  return at;
}

/** The place in the text of a value that can be written over without touching anything else. */
function spotOf(doc: Document, path: Path): readonly [number, number] | undefined {
  const parent = doc.getIn(path.slice(0, -1), true);
  const key = path.at(-1)!;
  const node = isMap(parent)
    ? pairOf(parent, key)?.value
    : isSeq(parent)
      ? parent.items[key as number]
      : undefined;
  if (!isScalar(node) || node.anchor || node.tag || !node.range || node.value === null) return undefined;
  if (node.type !== 'PLAIN' && node.type !== 'QUOTE_DOUBLE' && node.type !== 'QUOTE_SINGLE') return undefined;
  return [node.range[0], node.range[1]];
}

/**
 * The job file with another value at a path; keys that are missing on the way are added. A value in the place of a value
 * changes no other character.
 *
 * @example
 * setText('a: 1 in # tape', ['a'], '2 in') //=> 'a: 2 in # tape'
 * setText('a: 1 in', ['b', 'c'], ['1 mm', '2 mm']) //=> 'a: 1 in\nb:\n  c: [1 mm, 2 mm]\n'
 */
export function setText(text: string, path: Path, value: Written): string {
  const doc = keptText(text);
  const spot = typeof value === 'string' ? spotOf(doc, path) : undefined;
  if (spot && typeof value === 'string')
    return text.slice(0, spot[0]) + scalarText(value) + text.slice(spot[1]);
  const map = mapAt(doc, path.slice(0, -1));
  if (!map) return text;
  put(map, path.at(-1)!, value, path.length);
  return textOf(doc, text);
}

/**
 * The job file without a key. Maps above it that are then empty go too, down to the first `keep` keys of the path.
 *
 * @example
 * removeText('a: {b: 1}\nc: 2', ['a', 'b'], 0) //=> 'c: 2\n'
 * removeText('a: {b: 1}\nc: 2', ['a', 'b'], 1) //=> 'a: {}\nc: 2\n'
 */
export function removeText(text: string, path: Path, keep: number): string {
  const doc = keptText(text);
  for (let length = path.length; length > keep; length--) {
    const parent = length === 1 ? doc.contents : doc.getIn(path.slice(0, length - 1), true);
    const emptied = length === path.length || isEmptyAt(doc, path.slice(0, length));
    if (!isMap(parent) || !emptied) break;
    const pair = pairOf(parent, path[length - 1]!);
    if (!pair) break;
    parent.items.splice(parent.items.indexOf(pair), 1);
  }
  return textOf(doc, text);
}

function isEmptyAt(doc: Document, path: Path): boolean {
  const node = doc.getIn(path, true);
  return isMap(node) && node.items.length === 0;
}

/**
 * The job file with a key under another name, its value and its place kept. A name that is empty or taken changes nothing.
 *
 * @example
 * renameText('a: {b: 1, c: 2}', ['a', 'b'], 'd') //=> 'a: {d: 1, c: 2}\n'
 */
export function renameText(text: string, path: Path, name: string): string {
  const doc = keptText(text);
  const parent = path.length === 1 ? doc.contents : doc.getIn(path.slice(0, -1), true);
  if (!isMap(parent) || EMPTY.test(name) || pairOf(parent, name)) return text;
  const pair = pairOf(parent, path.at(-1)!);
  if (!pair) return text;
  pair.key = scalarNode(name);
  return textOf(doc, text);
}

/** The job file with a new key right behind another one. */
export function insertText(text: string, path: Path, name: string, value: Written): string {
  const doc = keptText(text);
  const parent = doc.getIn(path.slice(0, -1), true);
  const pair = isMap(parent) ? pairOf(parent, path.at(-1)!) : undefined;
  if (!isMap(parent) || !pair || pairOf(parent, name)) return text;
  const fresh = new Pair(scalarNode(name), value === null ? null : nodeOf(value, path.length));
  parent.items.splice(parent.items.indexOf(pair) + 1, 0, fresh);
  return textOf(doc, text);
}
