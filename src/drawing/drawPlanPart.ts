import type { Ring } from '../geometry/index.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import { grow } from './boxes.ts';
import { chalkLinesIn, quarterLetters } from './chalkMarks.ts';
import { clipMarks, ringMeets } from './clipMarks.ts';
import type { Drawing } from './Drawing.ts';
import type { PlanOptions } from './drawPlan.ts';
import { endCuts } from './endCuts.ts';
import { matchLines, overhang } from './matchLines.ts';
import { movementMarks, movementWords } from './movementMarks.ts';
import { nameRequest } from './nameRequest.ts';
import type { PlanPart, PlanParts } from './PlanParts.ts';
import { asShown, holds, type PartOnPaper, partOnPaper } from './partOnPaper.ts';
import { penSvg } from './penSvg.ts';
import { pieceAreas } from './pieceMarks.ts';
import { pieceNames } from './pieceNames.ts';
import { placeNames } from './placeNames.ts';
import { cornerLetters, doorWords, obstacleMarks, wallMarks } from './roomMarks.ts';
import { toPaper } from './Scale.ts';
import { seamMarks } from './seamMarks.ts';
import { specks } from './specks.ts';
import { takenBy } from './takenBy.ts';
import { tileAreas } from './tileAreas.ts';

/** A part of a plan, the names on it that found no place, and whether its whole tiles were too small for theirs. */
export interface PlanPartDrawing extends Drawing {
  readonly unnamed: readonly string[];
  readonly counted: boolean;
}

function marksOf(
  surface: PacketSurface,
  part: PlanPart,
  placed: PartOnPaper,
  { say, ...options }: PlanOptions,
) {
  const { scale, paper, window, shown } = placed;
  const chalk = chalkLinesIn(surface.chalk.lines, scale, { box: window, overhang, paper });
  const drawn = [
    ...clipMarks(
      [
        ...pieceAreas(surface, scale),
        ...tileAreas(surface.pieces, surface, scale),
        ...obstacleMarks(surface, scale),
        ...wallMarks(surface, scale),
        ...movementMarks(surface, scale),
        ...seamMarks(surface, scale),
        ...quarterLetters(surface, scale),
        ...cornerLetters(surface, scale, chalk),
      ],
      shown,
    ),
    ...chalk,
  ];
  const joined = [...drawn, ...matchLines(part, window, say, { ...takenBy(drawn), paper })];
  const doors = clipMarks(doorWords(surface, scale, say, { ...takenBy(joined), paper: shown }), shown);
  const taken = { ...takenBy([...joined, ...doors]), paper: shown };
  const ends = endCuts(surface, scale, { ...options, say }, taken, window);
  const marks = [...joined, ...doors, ...ends.marks];
  const soft = movementWords(surface, scale, say, {
    box: window,
    taken: { ...takenBy(marks), paper: shown },
  });
  return { marks: [...marks, ...soft], toLead: ends.toLead };
}

/**
 * One part of a plan, on a page of its own, with the numbers of its neighbours at its match lines. Pieces that lie across
 * one are drawn on both pages, and named where their middle is.
 */
export function drawPlanPart(
  surface: PacketSurface,
  parts: PlanParts,
  part: PlanPart,
  options: PlanOptions,
): PlanPartDrawing {
  const placed = partOnPaper(surface, parts, part);
  const { scale, paper, shown, own } = placed;
  const near = surface.pieces.filter(({ shape }) =>
    ringMeets(
      shape.outer.map((point) => toPaper(scale, point)),
      grow(shown, 1),
    ),
  );
  const { marks, toLead } = marksOf({ ...surface, pieces: near }, part, placed, options);
  const onPaper = (ring: Ring) => ring.map((point) => toPaper(scale, point));
  const outline = onPaper(surface.outline);
  const bare = surface.obstacles.map(({ ring }) => onPaper(ring));
  const must = specks(near, scale);
  const ground = {
    paper: shown,
    outline,
    bare,
    taken: takenBy(marks).boxes,
    lines: takenBy(marks, true).lines,
    must,
  };
  const { requests, counted } = pieceNames(near, scale, options.numbers ?? false, ground);
  const things = surface.obstacles.map(({ name, ring }) =>
    nameRequest(name, { outer: ring, holes: [] }, scale),
  );
  const mine = [...requests, ...things].filter(({ pole }) => holds(own, pole));
  const names = placeNames([...toLead, ...mine.map((request) => asShown(request, shown))], ground);
  const { right: widthMm, top: heightMm } = paper;
  const frame = { id: options.id, label: options.label, widthMm, heightMm, ratio: scale.ratio };
  return { ...penSvg([...marks, ...names.marks], frame), unnamed: names.unplaced, counted };
}
