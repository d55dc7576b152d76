import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Job } from '../job/Job.ts';
import type { Problem } from '../job/Problem.ts';
import type { Packet } from '../packet/Packet.ts';
import type { Speaker } from '../sheets/makeSheets.ts';
import type { SheetView } from '../sheets/SheetView.ts';

/** The pure part of the program, as the pages need it. */
export interface Core {
  readonly readJob: (
    text: string,
    file: string,
  ) => { readonly job?: Job; readonly problems: readonly Problem[] };
  readonly makePacket: (job: Job) => { readonly packet: Packet } | { readonly problems: readonly Problem[] };
  readonly makeSheets: (packet: Packet, words: Speaker) => readonly SheetView[];
}

async function loadPart<Part>(path: string, name: string, instead: Part): Promise<Part> {
  const url = new URL(path, import.meta.url);
  if (!existsSync(fileURLToPath(url))) return instead;
  return (await import(url.href).catch(() => ({ [name]: instead })))[name];
}

/** Loads the pure part. */
export async function loadCore(): Promise<Core> {
  const missing = (name: string) => () => {
    throw new Error(`${name} is not there yet`);
  };
  return {
    readJob: await loadPart('../job/readJob.ts', 'readJob', missing('readJob')),
    makePacket: await loadPart('../packet/makePacket.ts', 'makePacket', missing('makePacket')),
    makeSheets: await loadPart('../sheets/makeSheets.ts', 'makeSheets', missing('makeSheets')),
  };
}
