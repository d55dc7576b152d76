/** How many tiles a start takes, as far as is known, and its narrowest cut as a share of a tile. */
export interface OnCurve {
  readonly atMost: number;
  readonly share: number;
}

/**
 * Starts in layers: first those of which none takes as few tiles with as wide a narrowest cut, then the same of the rest, and so on.
 *
 * @example curveFronts([{ atMost: 9, share: 0.5 }, { atMost: 8, share: 0.2 }, { atMost: 9, share: 0.3 }]) //=> [[{ atMost: 9, share: 0.5 }, { atMost: 8, share: 0.2 }], [{ atMost: 9, share: 0.3 }]]
 */
export function curveFronts<One extends OnCurve>(starts: readonly One[]): One[][] {
  const fronts: One[][] = [];
  let left = [...starts].sort((a, b) => b.share - a.share || a.atMost - b.atMost);
  while (left.length > 0) {
    const front: One[] = [];
    const behind: One[] = [];
    for (const one of left) (one.atMost < (front.at(-1)?.atMost ?? Infinity) ? front : behind).push(one);
    fronts.push(front);
    left = behind;
  }
  return fronts;
}
