import { leastCut } from '../layout/faults/limits.ts';
import { sawDown } from '../measure/index.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import type { SheetContext } from './SheetContext.ts';

/**
 * What counts as half a tile, told once where a piece in sight is under half of its tile, so that 49 % on the plan and the count of
 * pieces under half a tile agree; as a cut of that size is printed, so that the cuts beside it and this figure agree too. Empty where no piece is so small, or the job asks for another share.
 */
export function halfTile(
  { packet, say, length }: Pick<SheetContext, 'packet' | 'say' | 'length'>,
  surface: PacketSurface,
): string {
  const { tiles, surfaces, joint } = packet.spec;
  const spec = surfaces.find(({ name }) => name === surface.name);
  const small =
    surface.start.chosen.smallestShare < 0.5 || surface.faults.some(({ code }) => code === 'underHalf');
  if (!small || spec?.minShare !== 0.5) return '';
  const laid = new Set(surface.pieces.map(({ tile }) => tile));
  const sides = tiles
    .filter(({ key, shape }) => laid.has(key) && shape === undefined)
    .flatMap((tile) => [tile.length, tile.width]);
  const halves = [
    ...new Set(
      sides.map((side) => length(sawDown(Math.round(leastCut(side, joint, 0.5)), packet.rounding.step))),
    ),
  ];
  return halves.length === 0 ? '' : say('fault.half', { halves: halves.join(' · ') });
}
