import { type Point, rotate } from '../../src/geometry/index.ts';
import type { Piece } from '../../src/layout/Layout.ts';
import type { Movement } from '../../src/layout/movement/Movement.ts';

/** What is judged: the pieces of a floor and its soft joints, in one frame; `turn` in radians brings them back to the room's. */
export interface JudgedBays {
  readonly pieces: readonly Pick<Piece, 'id' | 'shape'>[];
  readonly movement: Pick<Movement, 'lines' | 'limit'>;
  readonly turn: number;
}

const ACROSS = { along: 0, across: 1 } as const;

/** Pieces that a soft joint crosses: it lies on no joint of the pattern there. */
export function crossedPieces({ pieces, movement }: JudgedBays): readonly string[] {
  return movement.lines.flatMap(({ axis, at }) =>
    pieces.flatMap(({ id, shape }) => {
      const on = shape.outer.map((point) => point[ACROSS[axis]]);
      return Math.min(...on) < at && Math.max(...on) > at ? [`${id} ${axis} ${at}`] : [];
    }),
  );
}

/** Pieces that reach into a soft joint, by more than rounding: two ticks. */
export function piecesInside({ pieces, movement }: JudgedBays): readonly string[] {
  return movement.lines.flatMap(({ axis, at, width }) =>
    pieces.flatMap(({ id, shape }) => {
      const on = shape.outer.map((point) => point[ACROSS[axis]]);
      const into = Math.min(Math.max(...on) - (at - width / 2), at + width / 2 - Math.min(...on));
      return into > 2 ? [`${id} ${axis} ${at}: ${into}`] : [];
    }),
  );
}

/**
 * Bays that are longer than the limit along a wall or square to it. A bay is every piece between the same soft joints, so
 * it is known from the pieces alone; rotated corners are off by a tick at most.
 */
export function bayFaults({ pieces, movement, turn }: JudgedBays): readonly string[] {
  const bays = new Map<string, Point[]>();
  for (const { shape } of pieces) {
    const [x, y] = [0, 1].map((axis) => middle(shape.outer.map((point) => point[axis]!)));
    const before = movement.lines.map(({ axis, at }) => (at < (axis === 'along' ? x! : y!) ? 1 : 0));
    const bay = bays.get(before.join('')) ?? [];
    bay.push(...shape.outer.map((point) => rotate(point, turn)));
    bays.set(before.join(''), bay);
  }
  return [...bays].flatMap(([bay, points]) =>
    [0, 1].flatMap((axis) => {
      const on = points.map((point) => point[axis]!);
      const run = on.reduce((a, b) => Math.max(a, b)) - on.reduce((a, b) => Math.min(a, b));
      return run > movement.limit + (turn === 0 ? 0 : 2) ? [`bay ${bay}: ${run} on axis ${axis}`] : [];
    }),
  );
}

function middle(values: readonly number[]): number {
  return (Math.min(...values) + Math.max(...values)) / 2;
}
