import type { PacketSurface } from '../packet/Packet.ts';
import type { Drawing, DrawOptions, Space } from './Drawing.ts';
import type { Mark } from './Mark.ts';
import { penSvg } from './penSvg.ts';
import { circlesOf } from './pieceMarks.ts';
import { obstacleMarks, wallMarks } from './roomMarks.ts';
import { smallScale } from './smallScale.ts';
import { shapeOn } from './trueCircle.ts';

/** Paper round the room, in mm, and more pieces than this are left out. */
const border = 1;
const mostPieces = 2000;

/** A small plan without a scale or words, as large as the space allows: walls and pieces. */
export function drawThumbnail(
  surface: PacketSurface,
  options: Pick<DrawOptions, 'id' | 'label'> & { readonly space: Space },
): Drawing {
  const { scale, widthMm, heightMm } = smallScale(surface, options.space, border);
  const circles = circlesOf(surface);
  const pieces = surface.pieces.length <= mostPieces ? surface.pieces : [];
  const areas = pieces.map((piece): Mark => {
    return { mark: 'area', rings: shapeOn(scale, piece.shape, circles), line: 'joint' };
  });
  return penSvg([...areas, ...obstacleMarks(surface, scale), ...wallMarks(surface, scale)], {
    id: options.id,
    label: options.label,
    widthMm,
    heightMm,
    ratio: null,
  });
}
