import { type System, TICKS_PER_INCH, TICKS_PER_MM } from '../measure/index.ts';
import type { Drawing, DrawOptions } from './Drawing.ts';
import type { Mark, Spot } from './Mark.ts';
import { trimmed } from './markBounds.ts';
import { penSvg } from './penSvg.ts';
import { path, text } from './text.ts';

/** The bar's length and where it is ticked, in mm. */
const bars: Readonly<
  Record<System, { readonly units: number; readonly unit: number; readonly words: string }>
> = {
  inches: { units: 4, unit: TICKS_PER_INCH / TICKS_PER_MM, words: '4 in' },
  mm: { units: 10, unit: 10, words: '100 mm' },
};

function bar(system: System, place: (along: number, off: number) => Spot, turn: 0 | 90): readonly Mark[] {
  const { units, unit, words } = bars[system];
  const ticks = Array.from({ length: units + 1 }, (_, i) => {
    const high = i === 0 || i === units ? 4 : 2;
    return path([place(i * unit, 0), place(i * unit, high)], 'slash');
  });
  return [
    path([place(0, 0), place(units * unit, 0)], 'slash'),
    ...ticks,
    text(place((units * unit) / 2, 4.4), words, { size: 8, turn }),
  ];
}

/** Two bars from one corner, level and upright: printers stretch one way, so both have to be laid against a rule. */
export function drawCheckBars(options: DrawOptions): Drawing {
  const { marks, ...size } = trimmed([
    ...bar(options.system, (along, off) => [along, off], 0),
    ...bar(options.system, (along, off) => [off, along], 90),
  ]);
  return penSvg(marks, { id: options.id, label: options.label, ratio: 1, ...size });
}
