import { drawPlan, type Say } from '../drawing/index.ts';
import type { System, Ticks } from '../measure/index.ts';
import type { PacketSurface } from '../packet/Packet.ts';

/** Paper of the drawing in mm: the landscape of ISO A2 within its margins, so that small pieces have their names too. */
const paper = { widthMm: 554, heightMm: 380 };

/** A surface's plan as SVG in millimetres of paper, at the largest stated scale that fits; end cuts in steps of the saw. */
export function planSvg(surface: PacketSurface, system: System, step: Ticks, say: Say): string {
  const label = say('sheet.layout-plan.drawing', { name: surface.name });
  return `${drawPlan(surface, { id: 'plan', label, system, step, say, space: paper }).svg}\n`;
}
