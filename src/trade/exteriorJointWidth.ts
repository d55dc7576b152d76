import type { Ticks } from '../measure/index.ts';
import type { Fact } from './Fact.ts';
import { feet, inches } from './inches.ts';

/** Widths in inches of outside movement joints by their spacing in feet, and what each part of a temperature swing adds. */
export const EXTERIOR_WIDTH: Fact<{
  readonly near: { feet: number; width: number };
  readonly far: { feet: number; width: number };
  readonly swing: { overF: number; perF: number; adds: number };
}> = {
  value: {
    near: { feet: 8, width: 3 / 8 },
    far: { feet: 12, width: 1 / 2 },
    swing: { overF: 100, perF: 15, adds: 1 / 16 },
  },
  mark: 'S',
  source: 'TCNA EJ171',
};

/**
 * Width of a movement joint outside, in ticks. `swingF` is the yearly swing of the tile's temperature in °F; every part
 * of 15 °F that is begun over 100 °F counts. Spacings under 8 ft are held to the width for 8 ft.
 *
 * @example
 * exteriorJointWidth(780288, 130) //=> 4064
 * exteriorJointWidth(975360) //=> 3556
 */
export function exteriorJointWidth(spacing: Ticks, swingF = 100): Ticks {
  const { near, far, swing } = EXTERIOR_WIDTH.value;
  const share = Math.max(0, (spacing - feet(near.feet)) / (feet(far.feet) - feet(near.feet)));
  const parts = Math.max(0, Math.ceil((swingF - swing.overF) / swing.perF));
  return inches(near.width + share * (far.width - near.width) + parts * swing.adds);
}
