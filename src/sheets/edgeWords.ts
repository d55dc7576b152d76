import type { PacketSurface } from '../packet/Packet.ts';
import type { Say } from './SheetView.ts';
import { sayKind } from './sayKind.ts';

type Edged = Pick<PacketSurface, 'edges' | 'openings' | 'obstacles' | 'border' | 'inlays' | 'falls'>;

/** What the inner edge of a border is called by, before its wall. */
const BORDER = 'border:';

/** What the edge of a piece at a soft joint is called by. */
const SOFT = 'soft';

/**
 * The name of an edge in words: a wall by its letters, `hall:line` as the door line of the hall, `sink cabinet:3` as the face of
 * the sink cabinet, `border:A-B` as the border along that wall. Several edges with blanks between them, such as `B-C flange`, are said one after the other; a text that names no edge stays.
 */
export function edgeWords(surface: Edged, id: string, say: Say): string {
  const parts = splitEdges(surface, id);
  return parts ? [...new Set(parts.map((part) => oneEdge(surface, part, say)))].join(', ') : id;
}

/** The end of an edge where a tape is hooked: a lettered corner, the side of a doorway, or a corner of what stands in the room. */
export function endWords(surface: Edged, end: string, say: Say): string {
  const obstacle = obstacleOf(surface, end);
  if (obstacle) return say('edge.corner', { name: sayKind(say, obstacle) });
  return /^[A-Z]\d*$/.test(end) ? say('edge.letter', { name: end }) : edgeWords(surface, end, say);
}

function oneEdge(surface: Edged, id: string, say: Say): string {
  if (id === SOFT) return say('edge.soft', {});
  const fold = /^fold (.+):\d$/.exec(id)?.[1];
  if (fold) return say('edge.fold', { corner: fold });
  if (id.startsWith(BORDER)) return borderName(surface, id.slice(BORDER.length), say);
  const [name, part] = [id.replace(/:[^:]*$/, ''), /:([a-z]+)(\.\d+)?$/.exec(id)?.[1]];
  if (part && surface.openings.some((opening) => opening.name === name)) return say(`edge.${part}`, { name });
  const obstacle = obstacleOf(surface, id);
  return obstacle ? say('edge.face', { name: sayKind(say, obstacle) }) : id.replace(/\.\d+$/, '');
}

/** A border runs along a wall, or round an inlay. */
function borderName(surface: Edged, along: string, say: Say): string {
  return say('edge.border', { name: obstacleOf(surface, along) ?? along });
}

function obstacleOf({ obstacles, inlays = [] }: Edged, id: string): string | undefined {
  return [...obstacles, ...inlays].find(({ name }) => id === name || id.startsWith(`${name}:`))?.name;
}

/** Cuts a list of edges at the blanks between them, though a name may hold a blank itself; undefined where something else is found. */
function splitEdges(surface: Edged, text: string): readonly string[] | undefined {
  if (text === '') return [];
  const known = [
    ...surface.edges.map(({ id }) => id),
    ...surface.obstacles.map(({ name }) => name),
    ...(surface.inlays ?? []).flatMap(({ name, ring }) => ring.map((_, i) => `${name}:${i + 1}`)),
    ...(surface.inlays ?? []).flatMap(({ name, ring }) => ring.map((_, i) => `${BORDER}${name}:${i + 1}`)),
    ...(surface.border?.lines ?? []).map(({ edge }) => `${BORDER}${edge}`),
    ...(surface.falls?.folds ?? []).flatMap(({ corner }) =>
      [1, 2, 3, 4].map((side) => `fold ${corner}:${side}`),
    ),
    SOFT,
  ];
  const ids = known
    .filter((id) => text === id || text.startsWith(`${id} `))
    .sort((a, b) => b.length - a.length);
  for (const id of ids) {
    const rest = splitEdges(surface, text.slice(id.length + 1));
    if (rest) return [id, ...rest];
  }
  return undefined;
}
