/** An edge as the job file calls it: a wall split by a doorway has one name, and so has an obstacle with all its faces. */
export function edgeAsNamed(edge: string): string {
  return edge.replace(/(?:\.\d+|:[^:]+)$/, '');
}
