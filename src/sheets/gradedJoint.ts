import { type Notation, onGrid, printLength, type Ticks } from '../measure/index.ts';
import { groutGrade, soldIn } from '../trade/index.ts';

/**
 * A joint that a kind of grout is chosen by, in print: where rounding would move it to another kind, in the units that it is whole in.
 *
 * @example gradedJoint(960, { system: 'inches', decimal: '.' }) //=> '3 mm'
 * @example gradedJoint(1016, { system: 'inches', decimal: '.' }) //=> '1/8 in'
 */
export function gradedJoint(joint: Ticks, units: Notation): string {
  const isTold = groutGrade(onGrid(joint, units.system, {})) === groutGrade(joint);
  return printLength(joint, isTold ? units : { ...units, system: soldIn(joint, units.system) });
}
