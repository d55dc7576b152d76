/** Lists whose key in the job file has two words. */
const oneWord: Readonly<Record<string, string>> = {
  'corner checks': 'cornerChecks',
  'base line': 'baseLine',
  'comes out': 'comesOut',
};

/**
 * The part of a word's key that stands for a list of the job file.
 *
 * @example
 * listWord('corner checks') //=> 'cornerChecks'
 * listWord('walls') //=> 'walls'
 */
export function listWord(what: string): string {
  return oneWord[what] ?? what;
}
