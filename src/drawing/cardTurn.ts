import type { Cut } from '../cuts/Cut.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import { type CardTurn, wallDownTurn, wallEdges } from './cutFrame.ts';

/**
 * How a card shows a cut: the wall's side at the foot; where no wall cuts the tile, as round a flange, its first piece as it lies on the
 * plan, so that all pieces of a ring are turned alike.
 *
 * @returns the turn from the cut's own axes to the card, and whether it is that of the plan. On a floor laid aslant the plan's is taken to
 * the nearest quarter.
 */
export function cardTurn(
  cut: Cut,
  { pieces, turn: floor }: Pick<PacketSurface, 'pieces' | 'turn'>,
): { readonly turn: CardTurn; readonly asPlan: boolean } {
  const first = pieces.find(({ id }) => id === cut.pieces[0]);
  if (!first || wallEdges(cut).length > 0) return { turn: wallDownTurn(cut), asPlan: false };
  const quarters = Math.round((floor + (first.slantDeg ?? 0)) / 90) + first.quarter;
  const whole = (cut.turns?.[0] ?? 0) / 90 + quarters;
  return { turn: ((((whole % 4) + 4) % 4) * 90) as CardTurn, asPlan: true };
}
