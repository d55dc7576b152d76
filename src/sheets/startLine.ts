/**
 * The line of a job file that names a start, as it is to be written there; empty where there is nothing to name.
 *
 * @example startLine('along: tile on A-B') //=> 'start: {along: tile on A-B}'
 * @example startLine('') //=> ''
 */
export function startLine(wish: string): string {
  return wish === '' ? '' : `start: {${wish}}`;
}
