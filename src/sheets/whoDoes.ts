import type { SheetContext } from './SheetContext.ts';
import { sayThing } from './sayThing.ts';

/** Whose trade a kind of height is, where the job does not say who does it. */
const TRADES: Readonly<Record<string, string>> = {
  flange: 'plumber',
  door: 'carpenter',
  floor: 'setter',
  undercut: 'carpenter',
};

/** What water or gas is joined to: only a licensed plumber takes it off and puts it back. */
export const PLUMBED =
  /\b(?:toilet|wc|flange|vanity|basin|sink|dishwasher|washer|washing machine|bidet|radiator|tub|inodoro|lavabo|lavavajillas|lavadora|bidé|radiador)\b/i;

/** A toilet stands on its flange. */
const STANDS_ON: Readonly<Record<string, RegExp>> = { flange: /\b(?:toilet|wc|closet|inodoro)\b/i };

/**
 * Who does what a height asks for: whoever the job names for the thing that comes out, and beside it a licensed plumber where
 * it is plumbing and the job names someone else.
 */
export function whoDoes(
  { packet, say }: Pick<SheetContext, 'packet' | 'say'>,
  name: string,
  kind: string,
): string {
  const asked = name.toLowerCase();
  const out = packet.base.comesOut.find(
    ({ what }) => what.toLowerCase() === asked || (STANDS_ON[kind]?.test(what) ?? false),
  );
  const plumbed = kind === 'flange' || PLUMBED.test(name);
  const trade = say(`height.who.${plumbed ? 'plumber' : (TRADES[kind] ?? 'installer')}`);
  if (!out?.who) return trade;
  const who = sayThing(say, out.who);
  return plumbed && !/plumb|plomer|fontaner|encanad/i.test(out.who) ? `${who}, ${trade}` : who;
}
