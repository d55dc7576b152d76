/** What a figure beside a code is, told from the ending of its name. */
export type FigureKind =
  | 'text'
  | 'length'
  | 'area'
  | 'mass'
  | 'volume'
  | 'share'
  | 'temperature'
  | 'metres'
  | 'number';

const ENDINGS: readonly (readonly [RegExp, FigureKind])[] = [
  [/KgPerM2$|KgPerLitre$|LitresPerM2$|M2PerLitre$/, 'number'],
  [/M2$/, 'area'],
  [/Kg$/, 'mass'],
  [/Litres$/, 'volume'],
  [/Share$/, 'share'],
  [/TempC$/, 'temperature'],
  [/Metres$/, 'metres'],
  [/Count$|Hours$|Days$|Months$|Years?$|Price$|Number$/, 'number'],
];

/**
 * Kind of a figure by its name and value. A number whose name tells no other unit is a length in ticks.
 *
 * @example
 * figureKind('gap', 2032) //=> 'length'
 * figureKind('areaM2', 5.1) //=> 'area'
 * figureKind('bagCount', 3) //=> 'number'
 * figureKind('lot', '0417') //=> 'text'
 */
export function figureKind(name: string, value: number | string): FigureKind {
  if (typeof value === 'string') return 'text';
  const asked = name.charAt(0).toUpperCase() + name.slice(1);
  return ENDINGS.find(([ending]) => ending.test(asked))?.[1] ?? 'length';
}
