import { join } from 'node:path';
import type { Packet } from '../../../src/packet/Packet.ts';
import { makeSheets } from '../../../src/sheets/makeSheets.ts';
import { readWords } from '../../../src/site/words.ts';

const words = readWords(join(import.meta.dirname, '..', '..', '..', 'layouts', 'words'));

/** What stands on each sheet of a packet, sheet by sheet: all its words and figures one after the other, drawings as their texts. */
export function sheetTexts(packet: Packet): Record<string, string> {
  return Object.fromEntries(
    makeSheets(packet, words).map(({ name, data }) => [name, textsIn(data).join(' | ')]),
  );
}

function textsIn(value: unknown): string[] {
  if (typeof value === 'string')
    return [(value.startsWith('<svg') ? value.replace(/<[^>]*>/g, ' ') : value).replaceAll('\u00a0', ' ')];
  if (typeof value === 'number') return [String(value)];
  if (Array.isArray(value)) return value.flatMap(textsIn);
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(textsIn) : [];
}
