import { type Document, LineCounter, parseDocument, type YAMLError } from 'yaml';
import type { Figures } from '../shape/Reader.ts';
import { plainValue } from './plainValue.ts';

/** Longest job file, in characters. */
const LONGEST = 500_000;

/** A problem of the text itself, at a place in it. */
export interface TextTrouble {
  readonly code: string;
  readonly offset: number;
  readonly found: string;
  readonly figures: Figures;
}

/** A job file as YAML gives it. `value` is missing when the text cannot be trusted. */
export interface YamlText {
  readonly doc?: Document;
  readonly lines: LineCounter;
  readonly value?: unknown;
  readonly troubles: readonly TextTrouble[];
}

function lineAt(text: string, offset: number): string {
  const start = text.lastIndexOf('\n', offset - 1) + 1;
  const end = text.indexOf('\n', offset);
  return text.slice(start, end < 0 ? undefined : end).trim();
}

/** A quotation mark right after a colon, comma or bracket opens a text for YAML; with a digit behind it, it was meant as feet or inches. */
const OPENING_MARK = /(?:^|[:,[{]\s*|-\s+)["'][\d\s/]/;

function textTrouble(error: YAMLError, text: string): TextTrouble {
  const offset = Math.min(error.pos[0], text.length);
  const found = lineAt(text, offset);
  const figures = { message: error.message.replace(/\s+/g, ' ') };
  if (error.code === 'DUPLICATE_KEY') {
    const key = /^[^:]*/.exec(text.slice(offset))?.[0]?.trim() ?? '';
    return { code: 'duplicateKey', offset, found, figures: { key } };
  }
  if (error.code === 'TAB_AS_INDENT') return { code: 'tab', offset, found, figures };
  if (error.code === 'MULTIPLE_DOCS') return { code: 'twoDocuments', offset, found, figures };
  const strayMark = error.code === 'UNEXPECTED_TOKEN' || error.code === 'MISSING_CHAR';
  if (strayMark && OPENING_MARK.test(found)) return { code: 'inchMark', offset, found, figures };
  return { code: 'notYaml', offset, found, figures };
}

/** One slip makes YAML stumble several times: the first of a line counts, and beyond the first that cannot be explained only those that can. */
function withoutEchoes(troubles: readonly TextTrouble[], lines: LineCounter): readonly TextTrouble[] {
  const lineOf = ({ offset }: TextTrouble) => lines.linePos(offset).line;
  const firsts = troubles.filter(
    (one, i) => troubles.findIndex((other) => lineOf(other) === lineOf(one)) === i,
  );
  return firsts.filter((one, i) => one.code !== 'notYaml' || i === 0);
}

function parsed(text: string, lines: LineCounter): Document | undefined {
  try {
    return parseDocument(text, { lineCounter: lines, prettyErrors: false, logLevel: 'error' });
  } catch {
    return undefined;
  }
}

/** Reads a text as YAML 1.2; never throws. Keys that stand twice are told and the last one counts. */
export function readYaml(text: string): YamlText {
  const lines = new LineCounter();
  const tooLarge = { code: 'tooLarge', offset: 0, found: '', figures: { longest: LONGEST } };
  if (text.length > LONGEST) return { lines, troubles: [tooLarge] };
  const doc = parsed(text, lines);
  if (!doc) return { lines, troubles: [tooLarge] };
  const troubles = withoutEchoes(
    doc.errors.map((error) => textTrouble(error, text)),
    lines,
  );
  if (troubles.some(({ code }) => code !== 'duplicateKey')) return { doc, lines, troubles };
  const plain = plainValue(doc);
  if (!plain) return { doc, lines, troubles: [...troubles, tooLarge] };
  return { doc, lines, value: plain.value, troubles };
}
