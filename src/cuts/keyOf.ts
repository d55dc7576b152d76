import type { Description } from './describePiece.ts';

/** What makes two cuts the same but for their hand: kind, sizes as sawn, and the sides that stay factory edges. */
export function keyOf({ kind, sizes, factory }: Description): string {
  const words = sizes.map(({ what, from, saw }) => `${what} ${from} ${padded(saw)}`).sort();
  return [kind, ...words, factory.join(' ')].join('|');
}

/** Sizes from the left and from below come first, then shorter ones: the way a card is read. */
export function rankOf(description: Description): string {
  const far = description.sizes.filter(({ from }) => from === 'right' || from === 'top').length;
  return `${padded(far)}|${keyOf(description)}`;
}

function padded(ticks: number): string {
  // Moved up so that a negative distance sorts before a positive one.
  return String(ticks + 1e9).padStart(12, '0');
}
