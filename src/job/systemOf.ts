import { readLength, readPair, type System } from '../measure/index.ts';

function firstSystem(value: unknown): System | undefined {
  if (typeof value === 'string') {
    const length = readLength(value);
    if (length.ok) return length.system;
    const pair = readPair(value);
    return pair.ok ? pair.system : undefined;
  }
  if (typeof value !== 'object' || value === null) return undefined;
  for (const item of Object.values(value)) {
    const found = firstSystem(item);
    if (found) return found;
  }
  return undefined;
}

/**
 * Inches or millimetres: what the file says, else the unit of its first length.
 *
 * @example
 * systemOf({ joint: '3 mm' }) //=> 'mm'
 * systemOf({ print: { units: 'inches' }, joint: '3 mm' }) //=> 'inches'
 */
export function systemOf(file: unknown): System {
  if (typeof file !== 'object' || file === null) return 'inches';
  const { print, tile, joint, floor, floors } = file as Readonly<Record<string, unknown>>;
  const said =
    typeof print === 'object' && print !== null
      ? (print as Readonly<Record<string, unknown>>).units
      : undefined;
  if (said === 'mm' || said === 'inches') return said;
  return firstSystem([tile, joint, floor, floors]) ?? 'inches';
}
