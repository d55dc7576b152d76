import { describe, expect, test } from 'vitest';
import { isHard } from '../../src/cuts/isHard.ts';
import { boxOf, grow, segmentMeets } from '../../src/drawing/boxes.ts';
import { sizeMarks } from '../../src/drawing/cardSizes.ts';
import { tileRing, wallDownTurn } from '../../src/drawing/cutFrame.ts';
import { cardScale } from '../../src/drawing/drawCard.ts';
import type { PathMark, Spot } from '../../src/drawing/Mark.ts';
import { scaleFor, toPaper } from '../../src/drawing/Scale.ts';
import { textBox } from '../../src/drawing/textBox.ts';
import { demos } from '../sheets/demos.ts';

/** Lines of a card's sizes that run over one of its figures, by the figure's whole number. */
function crossed(slug: string) {
  const { packet } = demos.find((demo) => demo.slug === slug)!;
  const { tiles, print } = packet.spec;
  const ratio = cardScale(tiles, print.system);
  const carded = packet.surfaces.flatMap(({ cuts }) => cuts.filter(isHard));
  return carded.flatMap((cut) => {
    const tile = tiles.find(({ key }) => key === cut.tile)!;
    const scale = scaleFor(tileRing(tile), wallDownTurn(cut), ratio, [0, 0]);
    const reached = [...tileRing(tile), ...cut.sizes.flatMap(({ at }) => at)];
    const marks = sizeMarks(cut, scale, boxOf(reached.map((point) => toPaper(scale, point))), print);
    const figures = marks.filter((mark) => mark.mark === 'figure');
    const lines = marks.filter((mark): mark is PathMark => mark.mark === 'path' && mark.line === 'dimension');
    return figures.flatMap((figure) =>
      lines
        .filter(({ steps: [from, to] }) =>
          segmentMeets(from as Spot, to as Spot, grow(textBox(figure), -0.2)),
        )
        .map(() => `cut ${cut.number}: ${figure.whole}`),
    );
  });
}

describe('the sizes of a card', () => {
  test.each(demos.map(({ slug }) => slug))('no line runs over a figure in %s', (slug) => {
    expect(crossed(slug)).toEqual([]);
  });
});
