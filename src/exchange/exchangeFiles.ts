import type { Say } from '../drawing/index.ts';
import type { Packet, PacketSurface } from '../packet/Packet.ts';
import { calendarIcs } from './calendarIcs.ts';
import { cutsCsv } from './cutsCsv.ts';
import type { ExchangeFile } from './ExchangeFile.ts';
import { planDxf } from './planDxf.ts';
import { planSvg } from './planSvg.ts';

/** `plan.svg`; of several surfaces `plan-1.svg`, `plan-2.svg` in their order. */
const planName = ({ surfaces }: Packet, i: number, ending: string) =>
  `plan${surfaces.length > 1 ? `-${i + 1}` : ''}.${ending}`;

function planFiles(packet: Packet, surface: PacketSurface, i: number, say: Say): readonly ExchangeFile[] {
  const { system, step } = packet.spec.print;
  return [
    { name: planName(packet, i, 'svg'), text: planSvg(surface, system, step, say) },
    { name: planName(packet, i, 'dxf'), text: planDxf(surface) },
  ];
}

/** The files that other programs open: cuts as a table, plans as SVG and DXF, the calendar. `say` speaks the job's language. */
export function exchangeFiles(packet: Packet, say: Say): readonly ExchangeFile[] {
  return [
    { name: 'cuts.csv', text: cutsCsv(packet) },
    ...packet.surfaces.flatMap((surface, i) => planFiles(packet, surface, i, say)),
    { name: 'calendar.ics', text: calendarIcs(packet, say) },
  ];
}
