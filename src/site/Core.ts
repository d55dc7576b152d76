import type { Job } from '../job/Job.ts';
import type { Problem } from '../job/Problem.ts';
import { readJob } from '../job/readJob.ts';
import { makePacket, type PacketWishes } from '../packet/makePacket.ts';
import type { Packet } from '../packet/Packet.ts';
import { makeSheets, type Speaker } from '../sheets/makeSheets.ts';
import type { Say, SheetView } from '../sheets/SheetView.ts';
import { sawPage } from '../sheets/sawPage.ts';
import { type SawPart, sawParts } from '../sheets/sawParts.ts';

/** The pure part of the program, as the pages need it. */
export interface Core {
  readonly readJob: (
    text: string,
    file: string,
  ) => { readonly job?: Job; readonly problems: readonly Problem[] };
  readonly makePacket: (
    job: Job,
    wishes?: PacketWishes,
  ) => { readonly packet: Packet } | { readonly problems: readonly Problem[] };
  readonly makeSheets: (packet: Packet, words: Speaker) => readonly SheetView[];
  readonly sawPages: (packet: Packet, lang: string, say: Say) => readonly SawPart[];
}

/** The program's own. */
export const core: Core = {
  readJob,
  makePacket,
  makeSheets,
  sawPages: (packet, lang, say) => sawParts(sawPage(packet, lang, say)),
};
