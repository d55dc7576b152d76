import type { HeightSpec } from './Job.ts';

const KINDS: readonly (readonly [RegExp, HeightSpec['kind']])[] = [
  [/\bflange\b/i, 'flange'],
  [/\bdoor\b/i, 'door'],
  [/\b(?:floor|threshold|carpet)\b/i, 'floor'],
  [
    /\b(?:dishwasher|washer|dryer|fridge|refrigerator|freezer|range|stove|oven|cooker|machine|appliance)\b/i,
    'appliance',
  ],
];

/**
 * What a height is of, by its name.
 *
 * @example heightKind('hall floor') //=> 'floor'
 * @example heightKind('dishwasher') //=> 'appliance'
 * @example heightKind('radiator') //=> 'other'
 */
export function heightKind(name: string): HeightSpec['kind'] {
  return KINDS.find(([pattern]) => pattern.test(name))?.[1] ?? 'other';
}
