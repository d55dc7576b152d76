/**
 * How many letters must be put in, left out, changed or swapped with their neighbour to make one word of the other.
 *
 * @example
 * editDistance('tuch', 'touch') //=> 1
 * editDistance('wlals', 'walls') //=> 1
 */
export function editDistance(a: string, b: string): number {
  const rows = [Array.from({ length: b.length + 1 }, (_, j) => j)];
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const swap = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      const changed = rows[i - 1]![j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1);
      const swapped = swap ? rows[i - 2]![j - 2]! + 1 : Number.POSITIVE_INFINITY;
      row.push(Math.min(rows[i - 1]![j]! + 1, row[j - 1]! + 1, changed, swapped));
    }
    rows.push(row);
  }
  return rows[a.length]![b.length]!;
}

/** Spelling that `houseYear`, `house_year` and `House Year` share with `house year`. */
function plain(word: string): string {
  return word
    .replace(/([a-z])([A-Z])/g, '$1 $2')
    .replace(/[_\s-]+/g, ' ')
    .trim()
    .toLowerCase();
}

/**
 * The word of a list that was probably meant; undefined where none is near.
 *
 * @example
 * likely('tuch', ['read', 'touch']) //=> 'touch'
 * likely('houseYear', ['house year']) //=> 'house year'
 * likely('colour', ['bag', 'kind']) //=> undefined
 */
export function likely(word: string, words: readonly string[]): string | undefined {
  const meant = plain(word.slice(0, 40));
  const near = words
    .map((candidate) => ({ candidate, distance: editDistance(meant, plain(candidate)) }))
    .filter(
      ({ candidate, distance }) =>
        distance <= Math.max(1, Math.floor(Math.min(meant.length, candidate.length) / 3)),
    )
    .sort((a, b) => a.distance - b.distance);
  return near[0]?.candidate;
}

/**
 * Figures for a sentence that may name the likely word.
 *
 * @example
 * likelyFigures('wett', ['dry', 'wet']) //=> { near: 'yes', likely: 'wet' }
 * likelyFigures('blue', ['dry', 'wet']) //=> { near: 'no', likely: '' }
 */
export function likelyFigures(
  word: string,
  words: readonly string[],
): { readonly near: 'yes' | 'no'; readonly likely: string } {
  const meant = likely(word, words);
  return meant === undefined ? { near: 'no', likely: '' } : { near: 'yes', likely: meant };
}
