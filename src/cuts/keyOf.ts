import type { Description } from './describePiece.ts';

const OUTER = /^width$|ength$/;

/** Distances of a corner or a centre from two sides of the tile. */
const BOTH_WAYS = /(Across|Up)$/;

/** What makes two cuts the same but for their hand: kind, sizes as sawn, and the sides that stay factory edges. */
export function keyOf({ kind, sizes, factory }: Description): string {
  const words = new Map<string, string>();
  for (const [i, size] of sizes.entries()) {
    // Which distance across goes with which up tells a cut from its mirror image.
    const point = BOTH_WAYS.test(size.what) ? size.at[1].join(' ') : String(i);
    words.set(point, `${words.get(point) ?? ''}${wordOf(size)}+`);
  }
  return [kind, ...[...words.values()].sort(), factory.join(' ')].join('|');
}

function wordOf({ what, from, saw, at }: Description['sizes'][number]): string {
  // Sawn on both sides: equal only where they also lie at the same place in the tile.
  const place =
    from === 'none' && OUTER.test(what) ? at[0].map((tick) => Math.round(tick / 508)).join(' ') : '';
  return `${what} ${from} ${padded(saw)} ${place}`;
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
