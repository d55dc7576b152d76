import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Packet } from '../packet/Packet.ts';

const format: Packet['format'] = 'tile-job-packet/1';

/** The packet kept in a folder, or nothing when there is none that this program can read. */
export function keptPacket(folder: string): Packet | undefined {
  const file = join(folder, 'packet.json');
  if (!existsSync(file)) return undefined;
  try {
    const packet = JSON.parse(readFileSync(file, 'utf8')) as Packet;
    return packet.format === format ? packet : undefined;
  } catch {
    return undefined;
  }
}
