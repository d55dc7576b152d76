import type { Packet, PacketSurface } from '../packet/Packet.ts';
import { type Limit, type MortarUse, mortarRate } from '../trade/index.ts';
import type { Zone } from '../zones/Zone.ts';
import type { SheetContext } from './SheetContext.ts';
import { sayFigures } from './sayFigures.ts';
import { zoneMass } from './zoneMass.ts';

/**
 * Powder for a zone by the notch that the job sheet asks for where the job's own leaves too little bed: empty where it asks for none,
 * or where that takes no more. The batches stay as many, each so much larger: they go by the hours that a mix can be worked.
 */
export function deeperNotch(context: SheetContext, { name }: PacketSurface, zone: Zone): string {
  const { packet, say } = context;
  const advised = advisedNotch(packet, name);
  if (!advised) return '';
  const { notch } = advised;
  const { mortar } = packet.spec.products;
  // What the job says that a bag covers is for its own notch.
  const { bagKg, backButter } = mortar;
  const rate = mortarRate({ ...advised, bagKg, backButter }).kgPerM2;
  if (zone.areaM2 * rate <= zone.mortarKg + 1e-9) return '';
  const mass = zoneMass(packet, zone, ({ areaM2 }) => areaM2 * rate);
  const figures = sayFigures(context, { notchWidth: notch.width, notchDepth: notch.depth, mortarKg: mass });
  return say('sheet.zone.deeper', { kind: notch.kind, ...figures });
}

/** The notch that the trowel's limit names as the one that would pass, with the bed asked of it. */
function advisedNotch({ limits }: Packet, surface: string): Pick<MortarUse, 'notch' | 'bed'> | undefined {
  const isAsked = ({ rule, pass, surface: of }: Limit) =>
    rule === 'trowel' && !pass && (of === undefined || of === surface);
  const advice = limits.find(isAsked)?.wouldPass;
  if (!advice) return undefined;
  const { notchWidth, notchDepth, notchSpace, asked } = advice.figures;
  const notch = {
    kind: advice.code.endsWith('.v') ? ('v' as const) : ('square' as const),
    width: Number(notchWidth),
    depth: Number(notchDepth),
    space: Number(notchSpace),
  };
  return { notch, ...(typeof asked === 'number' ? { bed: asked } : {}) };
}
