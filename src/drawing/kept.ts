/**
 * What an iterator gives, worked out once and only as far as it is asked for: it can be gone through again from its beginning.
 *
 * @example [...kept([1, 2].values())()] //=> [1, 2]
 */
export function kept<T>(source: Iterator<T>): () => Iterable<T> {
  const known: T[] = [];
  return function* () {
    for (let i = 0; ; i += 1) {
      if (i === known.length) {
        const next = source.next();
        if (next.done) return;
        known.push(next.value);
      }
      yield known[i]!;
    }
  };
}
