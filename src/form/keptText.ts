import { type Document, isMap, isScalar, isSeq, parseDocument, Scalar, type Tags } from 'yaml';

/**
 * A job file as YAML that keeps the spelling of every value: `0417` stays `0417` and `yes` stays `yes`, because nothing is
 * made a number or a truth; comments and keys nobody knows stay too.
 */
export function keptText(text: string): Document {
  const nullOnly = (tags: Tags): Tags => tags.concat('null');
  return parseDocument(text, {
    schema: 'failsafe',
    customTags: nullOnly,
    uniqueKeys: false,
    prettyErrors: false,
    logLevel: 'silent',
  });
}

/** A line with one blank before its comment; only where the `#` is in no quotation marks. */
const closed = (line: string): string => line.replace(/^((?:[^"'#]|"[^"]*")*\S)\s+#/, '$1 #');

/** Writes it back; lines are as long as they are, and comments stand where they stood in the text `before`. */
export function textOf(doc: Document, before: string): string {
  const stood = new Map(before.split('\n').map((line) => [closed(line), line]));
  const text = doc.toString({ lineWidth: 0, flowCollectionPadding: false, nullStr: '' });
  return text
    .split('\n')
    .map((line) => stood.get(closed(line)) ?? line)
    .join('\n');
}

/** Whether a value written without quotation marks is read back as it is, in a list as well as behind a key. */
function isPlain(value: string): boolean {
  const doc = keptText(`[${value}]`);
  const { contents } = doc;
  if (doc.errors.length > 0 || !isSeq(contents) || contents.items.length !== 1) return false;
  const [item] = contents.items;
  return isScalar(item) && item.type === Scalar.PLAIN && item.value === value && !/[#\n]/.test(value);
}

/**
 * A value as one would write it by hand, with quotation marks only where YAML needs them.
 *
 * @example
 * scalarText('9 ft 2 1/4 in') //=> '9 ft 2 1/4 in'
 * scalarText('hall: the big one') //=> '"hall: the big one"'
 */
export function scalarText(value: string): string {
  return isPlain(value) ? value : JSON.stringify(value);
}

/** A value as a node of a document, spelled by `scalarText`. */
export function scalarNode(value: string): Scalar {
  const node = new Scalar(value);
  node.type = isPlain(value) ? Scalar.PLAIN : Scalar.QUOTE_DOUBLE;
  return node;
}

/** Whether a node stands on lines of its own, so that maps in it may too. */
export function isBlock(node: unknown): boolean {
  return (isMap(node) || isSeq(node)) && node.flow !== true;
}
