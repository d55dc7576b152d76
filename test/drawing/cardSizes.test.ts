import { describe, expect, test } from 'vitest';
import type { CutSize } from '../../src/cuts/Cut.ts';
import { isHard } from '../../src/cuts/isHard.ts';
import { boxOf, grow, overlap, segmentMeets } from '../../src/drawing/boxes.ts';
import { printedSizes, sizeMarks } from '../../src/drawing/cardSizes.ts';
import { tileRing, wallDownTurn } from '../../src/drawing/cutFrame.ts';
import { cardScale } from '../../src/drawing/drawCard.ts';
import type { PathMark, Spot } from '../../src/drawing/Mark.ts';
import { scaleFor, toPaper } from '../../src/drawing/Scale.ts';
import { textBox } from '../../src/drawing/textBox.ts';
import type { Ring } from '../../src/geometry/index.ts';
import type { Packet } from '../../src/packet/Packet.ts';
import { demos } from '../sheets/demos.ts';

/** The marks of the sizes of each card of a packet. */
function cardsOf({ spec: { tiles, print }, surfaces }: Packet) {
  const ratio = cardScale(tiles, print.system);
  return surfaces
    .flatMap(({ cuts }) => cuts.filter(isHard))
    .map((cut) => {
      const tile = tiles.find(({ key }) => key === cut.tile)!;
      const scale = scaleFor(tileRing(tile), wallDownTurn(cut), ratio, [0, 0]);
      const marks = sizeMarks(cut, tile, scale, print);
      const figures = marks.filter((mark) => mark.mark === 'figure');
      const lines = marks.filter(
        (mark): mark is PathMark => mark.mark === 'path' && mark.line === 'dimension',
      );
      return { number: cut.number, figures, lines };
    });
}

/** Lines of a card's sizes that run over one of its figures, by the figure's whole number. */
function crossed(packet: Packet) {
  return cardsOf(packet).flatMap(({ number, figures, lines }) =>
    figures.flatMap((figure) =>
      lines
        .filter(({ steps: [from, to] }) =>
          segmentMeets(from as Spot, to as Spot, grow(textBox(figure), -0.2)),
        )
        .map(() => `cut ${number}: ${figure.whole}`),
    ),
  );
}

/** Figures of a card that stand nearer to one another than 1 mm, or where one stands upright and one lies, than 2 mm. */
function near(packet: Packet) {
  return cardsOf(packet).flatMap(({ number, figures }) =>
    figures.flatMap((one, i) =>
      figures
        .slice(i + 1)
        .filter((other) => overlap(textBox(one), textBox(other), (one.turn === other.turn ? 1 : 2) - 0.01))
        .map((other) => `cut ${number}: ${one.whole} and ${other.whole}`),
    ),
  );
}

/** Sizes that run along a side of the whole tile and stand beyond another one, by what they are. */
function besideAnother({ spec: { tiles, print }, surfaces }: Packet): readonly string[] {
  const hard = surfaces.flatMap(({ cuts }) => cuts.filter(isHard));
  return hard.flatMap((cut) => {
    const tile = tiles.find(({ key }) => key === cut.tile)!;
    const scale = scaleFor(tileRing(tile), wallDownTurn(cut), 10, [0, 0]);
    const onPaper = (points: CutSize['at'] | Ring) => points.map((point) => toPaper(scale, point));
    const box = boxOf(onPaper(tileRing(tile)));
    return printedSizes(cut).flatMap((size) => {
      if (size.what === 'middleLength') return [];
      const alone = printedSizes(cut).indexOf(size);
      const figures = sizeMarks(cut, tile, scale, print).filter((mark) => mark.mark === 'figure');
      const [x, y] = figures[alone]!.at;
      const lies = (axis: 0 | 1, at: number) =>
        onPaper(size.at).every((spot) => Math.abs(spot[axis] - at) < 0.02);
      const wrong = [
        lies(0, box.left) && x > box.left,
        lies(0, box.right) && x < box.right,
        lies(1, box.bottom) && y > box.bottom,
        lies(1, box.top) && y < box.top,
      ];
      return wrong.includes(true) ? [`cut ${cut.number}: ${size.what}`] : [];
    });
  });
}

const ENDS = [
  ['leftLength', 'rightLength'],
  ['bottomLength', 'topLength'],
] as const;

/** Sizes of both ends of a leaning side that stand on one side of the tile, or whose own end no line starts from. */
function notAtItsEnd({ spec: { tiles, print }, surfaces }: Packet): readonly string[] {
  const hard = surfaces.flatMap(({ cuts }) => cuts.filter(isHard));
  return hard.flatMap((cut) => {
    const tile = tiles.find(({ key }) => key === cut.tile)!;
    const scale = scaleFor(tileRing(tile), wallDownTurn(cut), 10, [0, 0]);
    const marks = sizeMarks(cut, tile, scale, print);
    const figures = marks.filter((mark) => mark.mark === 'figure');
    const printed = printedSizes(cut);
    return ENDS.flatMap((names) => {
      const pair = names.map((name) => printed.findIndex(({ what }) => what === name));
      const [one, other] = pair.map((i) => printed[i]);
      if (!one || !other || one.from !== other.from) return [];
      // Square to the sizes, each figure stands beyond its own end as seen from that of the other.
      const [mine, theirs] = [one, other].map(({ at }) => toPaper(scale, at[1])) as [Spot, Spot];
      const start = toPaper(scale, one.at[0]);
      const axis = Math.abs(start[0] - mine[0]) > Math.abs(start[1] - mine[1]) ? 1 : 0;
      const [own, opposite] = pair.map((i) => figures[i]!.at[axis]) as [number, number];
      const way = Math.sign(theirs[axis] - mine[axis]);
      const apart = (mine[axis] - own) * way > 0 && (opposite - theirs[axis]) * way > 0;
      const starts = marks.some(
        (mark) =>
          mark.mark === 'path' &&
          mark.line === 'dimension' &&
          mark.steps.some((step) => Math.hypot((step as Spot)[0] - mine[0], (step as Spot)[1] - mine[1]) < 1),
      );
      return apart && starts ? [] : [`cut ${cut.number}: ${names.join(' and ')}`];
    });
  });
}

describe('the sizes of a card', () => {
  test.each(demos)('tell each end of a leaning side at that end in $slug', ({ packet }) => {
    expect(notAtItsEnd(packet)).toEqual([]);
  });

  test.each(demos)('what is left of a side of the tile stands beside that side in $slug', ({ packet }) => {
    expect(besideAnother(packet)).toEqual([]);
  });

  test.each(demos)('no line runs over a figure in $slug', ({ packet }) => {
    expect(crossed(packet)).toEqual([]);
  });

  test.each(demos)(
    'figures keep 1 mm apart, and 2 mm where one lies and one stands, in $slug',
    ({ packet }) => {
      expect(near(packet)).toEqual([]);
    },
  );
});
