import type { Packet, PacketNote } from '../packet/Packet.ts';
import { sheetContext } from '../sheets/SheetContext.ts';
import { sayFigures } from '../sheets/sayFigures.ts';
import type { Note } from './SiteJob.ts';
import type { Words } from './words.ts';

const order: readonly PacketNote['level'][] = ['fail', 'warn', 'info'];

/** The notes of a packet as sentences, the gravest first, each sentence once. */
export function noteLines(packet: Packet, words: Words, lang: string): readonly Note[] {
  const context = sheetContext(packet, { lang, say: words.say(lang) });
  const text = ({ code, figures, words: own }: PacketNote) =>
    words.has(lang, code) ? context.say(code, sayFigures(context, figures)) : own;
  return order.flatMap((level) => {
    const texts = packet.notes.filter((note) => note.level === level).map(text);
    return [...new Set(texts)].map((one) => ({ level, text: one }));
  });
}
