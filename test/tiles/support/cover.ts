/** The programme of covering as a general solver reads it, in the LP format: as few sets as can be that hold each kind as often as wanted. */
export function cover(
  counts: readonly number[],
  sets: readonly (readonly number[])[],
  by: 'whole' | 'parts',
): string {
  const names = sets.map((_, i) => `x${i}`);
  const rows = counts.map((count, kind) => {
    const terms = sets.flatMap((set, i) => {
      const held = set.filter((one) => one === kind).length;
      return held > 0 ? [`${held} ${names[i]}`] : [];
    });
    return ` k${kind}: ${terms.join(' + ')} >= ${count}`;
  });
  const kinds = by === 'whole' ? ['General', ` ${names.join(' ')}`] : [];
  return ['Minimize', ` tiles: ${names.join(' + ')}`, 'Subject To', ...rows, ...kinds, 'End'].join('\n');
}
