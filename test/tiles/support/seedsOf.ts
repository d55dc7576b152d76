/** So many seeds from 0 on, or of four parts the one that `PART` names, such as 2/4: a long test is run a part at a time. */
export function seedsOf(count: number): readonly number[] {
  const [part, parts] = (process.env.PART ?? '1/1').split('/').map(Number) as [number, number];
  return Array.from({ length: count }, (_, seed) => seed).filter((seed) => seed % parts === part - 1);
}
