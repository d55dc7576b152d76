import type { PacketSurface } from '../packet/Packet.ts';
import type { Drawing, DrawOptions, Space } from './Drawing.ts';
import type { Mark } from './Mark.ts';
import { penSvg } from './penSvg.ts';
import { circlesOf } from './pieceMarks.ts';
import { obstacleMarks, wallMarks } from './roomMarks.ts';
import { extent, type Scale } from './Scale.ts';
import { surfacePoints } from './surfaceScale.ts';
import { shapeOn } from './trueCircle.ts';

/** Paper round the room, in mm, and more pieces than this are left out. */
const border = 1;
const mostPieces = 2000;

/** A small plan without a scale or words, as large as the space allows: walls and pieces. */
export function drawThumbnail(
  surface: PacketSurface,
  options: Pick<DrawOptions, 'id' | 'label'> & { readonly space: Space },
): Drawing {
  const size = extent(surfacePoints(surface), surface.turn);
  const { widthMm, heightMm } = options.space;
  const perTick = Math.min((widthMm - 2 * border) / size.width, (heightMm - 2 * border) / size.height);
  const scale: Scale = {
    ratio: 1,
    paperMmPerTick: perTick,
    turn: surface.turn,
    origin: size.lowerLeft,
    spot: [border, border],
  };
  const circles = circlesOf(surface);
  const pieces = surface.pieces.length <= mostPieces ? surface.pieces : [];
  const areas = pieces.map((piece): Mark => {
    return { mark: 'area', rings: shapeOn(scale, piece.shape, circles), line: 'joint' };
  });
  return penSvg([...areas, ...obstacleMarks(surface, scale), ...wallMarks(surface, scale)], {
    id: options.id,
    label: options.label,
    widthMm: size.width * perTick + 2 * border,
    heightMm: size.height * perTick + 2 * border,
    ratio: null,
  });
}
