import type { DecimalMark } from '../measure/index.ts';

/**
 * Figures as the job file has them, with the decimal mark of a sheet's language.
 *
 * @example asMarked('1.8 % CM', ',') //=> '1,8 % CM'
 * @example asMarked('A108.01', ',') //=> 'A108.01'
 */
export function asMarked(text: string, decimal: DecimalMark | undefined = '.'): string {
  return text.replace(/(?<![\w.-])(\d+)\.(\d+)(?![\w.-])/g, `$1${decimal}$2`);
}
