import fc from 'fast-check';

const INCH = 8128;

/** Lengths in ticks from `least` to `most`, by sixteenths of an inch. */
export const sixteenths = (least: number, most: number) =>
  fc.integer({ min: (least * 16) / INCH, max: (most * 16) / INCH }).map((parts) => (parts * INCH) / 16);

type Corners = readonly (readonly [number, number])[];

/** Shapes of floors from width and height all over, what is cut out, and by how much corners stand off. */
export const FLOOR_SHAPES: Readonly<
  Record<string, (w: number, h: number, a: number, b: number, lean: number) => Corners>
> = {
  rectangle: (w, h) => [[0, 0], [w, 0], [w, h], [0, h]], // biome-ignore format: corners on a line
  leaning: (w, h, _a, _b, lean) => [[0, 0], [w, 0], [w + lean, h - lean], [-lean, h + lean]], // biome-ignore format: corners on a line
  clipped: (w, h, a, b) => [[0, 0], [w, 0], [w, h - b], [w - a, h], [0, h]], // biome-ignore format: corners on a line
  'round a corner': (w, h, a, b) => [[0, 0], [w, 0], [w, h - b], [w - a, h - b], [w - a, h], [0, h]], // biome-ignore format: corners on a line
};
