import { ringArea, ringLength } from '../geometry/index.ts';
import type { Ticks } from '../measure/index.ts';
import type { PieceClass, Placement } from './CutClass.ts';
import { clearApart } from './clearApart.ts';
import { keptLeft, leastLeft, leavesEnough, type Sawing } from './leavesEnough.ts';
import { linesPart } from './linesPart.ts';
import { placementsOf } from './placementsOf.ts';
import { ringOfBox } from './ringOfBox.ts';
import { settleTile } from './settleTile.ts';
import { slidesClear } from './slidesClear.ts';

/** What may lie in one tile. */
export interface TileRules {
  readonly classes: readonly PieceClass[];
  /** Ways for each class to lie, the unturned one first. */
  readonly ways: readonly (readonly Placement[])[];
  /** Area a class needs with half a kerf all round, and what a tile has of it. */
  readonly needs: readonly number[];
  readonly room: number;
  /** Whether the saw can part two, or all, where they lie or slide to. */
  readonly partsTwo: (a: Placement, b: Placement) => boolean;
  readonly partsAll: (placements: readonly Placement[]) => boolean;
  /** Whether two, or all, are far enough apart for any cut at all between them: what the bound goes by. */
  readonly mayPartTwo: (a: Placement, b: Placement) => boolean;
  readonly mayPartAll: (placements: readonly Placement[]) => boolean;
  /** Where they stay. */
  readonly settle: (placements: readonly Placement[]) => readonly Placement[] | undefined;
}

/** Two ticks for what rounding moved: they only ever make the bound lower. */
const ROUNDED = 2;

export function tileRules(classes: readonly PieceClass[], sawing: Sawing): TileRules {
  const { kerf } = sawing;
  const half = Math.max(0, kerf - ROUNDED) / 2;
  // Pieces a kerf apart do not overlap when each is grown by half of it, nor leave the tile grown by as much.
  const grown = (area: number, around: number) => area + around * half + Math.PI * half * half;
  const box = classes[0]?.box ?? { length: 0, width: 0 };
  const tile = ringOfBox(box);
  const ways = classes.map(placementsOf);
  const enough = enoughLeft(ways, sawing);
  const settle = (placements: readonly Placement[]) => settleTile(placements, { kerf, enough });
  const clear = slidesClear(kerf - ROUNDED);
  const mayPartAll = (placements: readonly Placement[]) => {
    const staying = placements.filter(stays);
    if (staying.length > 1 && !linesPart(staying.map(({ ring }) => ring), kerf - ROUNDED)) return false; // biome-ignore format: a question on a line
    return staying.length === placements.length || clear(placements);
  };
  const apart = keptByTurn(classes.length, (a, b) => {
    if (stays(a) && stays(b)) {
      const far = apartAs(distanceOf(a, b, kerf), kerf);
      if (far === 'never' || enough(a, b)) return far;
      return enough(a, b, 2 * ROUNDED) ? 'perhaps' : 'never';
    }
    if (!mayPartAll([a, b])) return 'never';
    return settle([a, b]) ? 'sawn' : 'perhaps';
  });
  return {
    classes,
    ways,
    needs: classes.map(({ area, ring }) => grown(area, ringLength(ring))),
    room: grown(Math.abs(ringArea(tile)), ringLength(tile)),
    settle,
    partsTwo: (a, b) => apart(a, b) === 'sawn',
    partsAll: (placements) => settle(placements) !== undefined,
    mayPartTwo: (a, b) => apart(a, b) !== 'never',
    mayPartAll,
  };
}

/** Whether two pieces, whichever is sawn off first, leave an offcut that is kept for the other. */
function enoughLeft(ways: readonly (readonly Placement[])[], sawing: Sawing) {
  // Most pieces leave enough whatever lies beside them; those that slide are asked where they lie.
  const left = keptLeft(sawing.kerf);
  const least = ways.map(([way]) => (stays(way!) ? leastLeft(way!, left) : 0));
  const leaves = (a: Placement, b: Placement, spare: number) =>
    least[a.of.id]! >= sawing.narrowest || leavesEnough(a, b, sawing, left, spare);
  return (a: Placement, b: Placement, spare = 0) => leaves(a, b, spare) && leaves(b, a, spare);
}

const stays = ({ slides }: Placement) => !slides.along && !slides.across;

/** Whether two pieces never share a tile, perhaps do when they slide or rounding is in doubt, or are sawn out of one. */
type Apart = 'never' | 'perhaps' | 'sawn';

function apartAs(distance: number, kerf: Ticks): Apart {
  if (distance >= kerf) return 'sawn';
  return distance >= kerf - ROUNDED ? 'perhaps' : 'never';
}

/** Sixths and eighths of a full turn are whole steps of this many. */
const TURNS = 24;

/** Keeps the answers for two classes and the turn between them: turning both alike changes nothing. */
function keptByTurn(
  count: number,
  ask: (a: Placement, b: Placement) => Apart,
): (a: Placement, b: Placement) => Apart {
  const answers: readonly Apart[] = ['never', 'perhaps', 'sawn'];
  const rows: (Uint8Array | undefined)[] = [];
  return (a, b) => {
    rows[a.of.id] ??= new Uint8Array(TURNS * count);
    const row = rows[a.of.id]!;
    const at = TURNS * b.of.id + ((b.turn - a.turn + 360) % 360) / (360 / TURNS);
    if (row[at] === 0) row[at] = 1 + answers.indexOf(ask(a, b));
    return answers[row[at]! - 1]!;
  };
}

/** The distance of two pieces, or what an edge of one has clear outside it where that is the kerf already. */
function distanceOf(a: Placement, b: Placement, kerf: Ticks): number {
  return (a.corners & b.corners) !== 0 ? Number.NEGATIVE_INFINITY : clearApart(a.ring, b.ring, kerf);
}
