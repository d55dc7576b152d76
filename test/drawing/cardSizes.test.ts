import { describe, expect, test } from 'vitest';
import { isHard } from '../../src/cuts/isHard.ts';
import { boxOf, grow, overlap, segmentMeets } from '../../src/drawing/boxes.ts';
import { sizeMarks } from '../../src/drawing/cardSizes.ts';
import { tileRing, wallDownTurn } from '../../src/drawing/cutFrame.ts';
import { cardScale } from '../../src/drawing/drawCard.ts';
import type { PathMark, Spot } from '../../src/drawing/Mark.ts';
import { scaleFor, toPaper } from '../../src/drawing/Scale.ts';
import { textBox } from '../../src/drawing/textBox.ts';
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
      const reached = [...tileRing(tile), ...cut.sizes.flatMap(({ at }) => at)];
      const marks = sizeMarks(cut, scale, boxOf(reached.map((point) => toPaper(scale, point))), print);
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

describe('the sizes of a card', () => {
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
