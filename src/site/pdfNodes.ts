const node = /\(node\d{8}\)/g;

/** Entries of a name tree stand in the order of their names: ISO 32000-1, 7.9.6. */
function sortedNames(names: string): string {
  const entries = names.match(/\(node\d{8}\) \d+ \d+ R/g) ?? [];
  return entries.sort().join(' ');
}

/**
 * Counts the names of a tagged PDF's parts from 1 in the order they come. The browser numbers them as it happens to
 * reach them, so that the same page would give other bytes. The names stay as long as they are: a PDF is a table of
 * byte offsets, so nothing in it may move.
 *
 * @example
 * countNodes('/ID (node00000067)/ID (node00000004)') //=> '/ID (node00000001)/ID (node00000002)'
 */
export function countNodes(text: string): string {
  const names = new Map<string, string>();
  const nameOf = (found: string): string => {
    const name = names.get(found) ?? `(node${String(names.size + 1).padStart(8, '0')})`;
    names.set(found, name);
    return name;
  };
  const tree = /\/Limits \[\(node\d{8}\) \(node\d{8}\)\](\s*)\/Names \[([^\]]*)\]/g;
  return text.replace(node, nameOf).replace(tree, (_, space: string, list: string) => {
    const sorted = sortedNames(list);
    const limits = [sorted.slice(0, 14), sorted.match(node)?.at(-1)].join(' ');
    return `/Limits [${limits}]${space}/Names [${sorted}]`;
  });
}

/** The same for a PDF as it came from the browser. */
export function fixPdfNodes(pdf: Uint8Array): Uint8Array {
  return Buffer.from(countNodes(Buffer.from(pdf).toString('latin1')), 'latin1');
}
