import { isMap, isScalar, isSeq } from 'yaml';
import type { Problem } from '../Problem.ts';
import type { Figures } from '../shape/Reader.ts';
import type { Trouble } from '../shape/Trouble.ts';
import { type NodeAt, nodeAt } from './nodeAt.ts';
import { keyText } from './plainValue.ts';
import type { TextTrouble, YamlText } from './readYaml.ts';

const LONGEST_FOUND = 80;

function shortened(text: string): string {
  const line = text.replace(/\s+/g, ' ').trim();
  return line.length > LONGEST_FOUND ? `${line.slice(0, LONGEST_FOUND - 1)}…` : line;
}

/** What YAML made of a value: it eats quotation marks and turns digits into numbers. */
function yamlFigures(node: unknown): Figures {
  if (!isScalar(node)) return {};
  const quoted = node.type === 'QUOTE_DOUBLE' || node.type === 'QUOTE_SINGLE';
  const how = quoted ? 'quoted' : typeof node.value === 'number' ? 'number' : 'text';
  return { value: shortened(String(node.value)), how };
}

/** A key with nothing behind it is named as the file has it, not by what the form would have had inside. */
function missingKey(code: string, at: NodeAt): Figures {
  const blank = at.node === undefined || (isScalar(at.node) && at.node.value === null);
  return code === 'missing' && at.key && blank ? { key: keyText(at.key) } : {};
}

/** Gives a trouble its line and column, and what stands there. */
export function placeTrouble(trouble: Trouble, yaml: YamlText, text: string, file: string): Problem {
  const { code, path, figures, atKey } = trouble;
  const at: NodeAt = yaml.doc ? nodeAt(yaml.doc, path) : { complete: false };
  const node = atKey || !at.node ? (at.key ?? at.node) : at.node;
  // A part of a text (`5 ft` of a list written as one value) is quoted with the whole text; a missing key has no text.
  const shown = code === 'missing' ? undefined : at.complete && !atKey ? at.node : atKey ? at.key : at.node;
  const range = shown?.range;
  const source = isMap(shown) ? '{…}' : isSeq(shown) ? '[…]' : range ? text.slice(range[0], range[1]) : '';
  const { line, col } = yaml.lines.linePos(node?.range?.[0] ?? 0);
  return {
    code,
    path,
    file,
    line: Math.max(1, line),
    column: Math.max(1, col),
    found: shortened(source),
    figures: { ...yamlFigures(shown), ...figures, ...missingKey(code, at) },
  };
}

/** Gives a problem of the text itself its line and column. */
export function placeTextTrouble(trouble: TextTrouble, yaml: YamlText, file: string): Problem {
  const { code, offset, found, figures } = trouble;
  const { line, col } = yaml.lines.linePos(offset);
  return {
    code,
    path: [],
    file,
    line: Math.max(1, line),
    column: Math.max(1, col),
    found: shortened(found),
    figures,
  };
}
