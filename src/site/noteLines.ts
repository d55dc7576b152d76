import type { Packet, PacketNote } from '../packet/Packet.ts';
import { cautiousSay } from '../sheets/cautiousSay.ts';
import { noteText } from '../sheets/noteText.ts';
import { sheetContext } from '../sheets/SheetContext.ts';
import type { Note } from './SiteJob.ts';
import type { Words } from './words.ts';

const order: readonly PacketNote['level'][] = ['fail', 'warn', 'info'];

/** The notes of a packet as sentences, the gravest first, each sentence once. */
export function noteLines(packet: Packet, words: Words, lang: string): readonly Note[] {
  const context = sheetContext(packet, { lang, say: cautiousSay(lang, words) });
  return order.flatMap((level) => {
    const texts = packet.notes.filter((note) => note.level === level).map((note) => noteText(context, note));
    return [...new Set(texts)].map((one) => ({ level, text: one }));
  });
}

/** The packet with its notes also in English, so that the file can be read by itself. */
export function withEnglish(packet: Packet, words: Words): Packet {
  const context = sheetContext(packet, { lang: 'en', say: words.say('en') });
  return { ...packet, notes: packet.notes.map((note) => ({ ...note, words: noteText(context, note) })) };
}
