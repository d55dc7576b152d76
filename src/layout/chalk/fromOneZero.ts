import type { ChalkLine, ChalkMark } from '../Layout.ts';

/** Lines with all marks of a wall read from the end that its first mark is read from, where they can be. */
export function fromOneZero(lines: readonly ChalkLine[]): ChalkLine[] {
  const zeros = new Map<string, string>();
  return lines.map((line) => ({ ...line, marks: line.marks.map((mark) => read(mark, zeros)) }));
}

function read(mark: ChalkMark, zeros: Map<string, string>): ChalkMark {
  // A doorway parts a wall in edges; the tape runs on.
  const wall = mark.edge.replace(/\.\d+$/, '');
  const zero = mark.both?.find(({ end }) => end === zeros.get(wall));
  if (!zeros.has(wall)) zeros.set(wall, mark.end);
  return zero ? { ...mark, ...zero } : mark;
}
