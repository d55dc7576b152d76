import type { Cut } from '../../../src/cuts/Cut.ts';
import type { Packet } from '../../../src/packet/Packet.ts';

const ticksPerSixtyFourth = 127;
const ticksPerMm = 320;

/** A saw size as a tape names it: `7 5/8`, `5/8`, `7`, or millimetres `193`, `193.5`. */
export function sawFigure(ticks: number, system: Packet['spec']['print']['system']): string {
  if (system === 'mm') return String(Math.round((ticks / ticksPerMm) * 10) / 10);
  let [top, bottom] = [Math.round(ticks / ticksPerSixtyFourth), 64];
  const whole = Math.floor(top / bottom);
  top -= whole * bottom;
  while (top > 0 && top % 2 === 0) [top, bottom] = [top / 2, bottom / 2];
  if (top === 0) return String(whole);
  return whole === 0 ? `${top}/${bottom}` : `${whole} ${top}/${bottom}`;
}

/** Whether a text holds a figure as a whole one and not as a part of another. */
export function holdsFigure(text: string, figure: string): boolean {
  const spaced = text.replace(/\s+/g, ' ');
  return new RegExp(`(?<![\\d/.])${figure.replaceAll('.', '\\.')}(?![\\d/]|\\.\\d| \\d+/\\d)`).test(spaced);
}

/** What the saw list has to say of a cut: its fence settings. */
export function fenceFigures({ fences }: Cut, packet: Packet): readonly string[] {
  return fences.map(({ saw }) => sawFigure(saw, packet.spec.print.system));
}
