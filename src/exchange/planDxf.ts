import {
  Colors,
  DxfWriter,
  LWPolylineFlags,
  point2d,
  point3d,
  TextHorizontalAlignment,
  TextVerticalAlignment,
  Units,
} from '@tarikjabiri/dxf';
import { type Point, poleOfInaccessibility, type Ring, rotate, type Shape } from '../geometry/index.ts';
import type { PacketPiece, PacketSurface } from '../packet/Packet.ts';

/** Layers of the drawing and the standard colours that they are shown in. */
const layers = {
  wall: Colors.White,
  opening: Colors.White,
  obstacle: Colors.White,
  'tile-whole': Colors.White,
  'tile-cut': Colors.White,
  chalk: Colors.White,
  'soft-joint': Colors.White,
  name: Colors.White,
} as const;

type Layer = keyof typeof layers;

const ticksPerMm = 320;
/** Height of names in mm: a small strip still holds its own. */
const nameHeight = 20;

/** Ticks of the pattern's frame to millimetres in the room's, to a thousandth. */
function millimetres(turn: number) {
  const exact = (value: number) => Math.round((value / ticksPerMm) * 1000) / 1000 + 0;
  return (point: Point): Point => {
    const [x, y] = rotate(point, (turn * Math.PI) / 180);
    return [exact(x), exact(y)];
  };
}

function drawer(writer: DxfWriter, toMm: (point: Point) => Point) {
  const points = (ring: readonly Point[]) => ring.map((point) => ({ point: point2d(...toMm(point)) }));
  const closed = (layerName: Layer, ring: Ring) =>
    writer.addLWPolyline(points(ring), { layerName, flags: LWPolylineFlags.Closed });
  const open = (layerName: Layer, ...line: readonly Point[]) =>
    writer.addLWPolyline(points(line), { layerName });
  const shape = (layerName: Layer, { outer, holes }: Shape) => {
    for (const ring of [outer, ...holes]) closed(layerName, ring);
  };
  const circle = (layerName: Layer, centre: Point, radius: number) =>
    writer.addCircle(point3d(...toMm(centre), 0), radius / ticksPerMm, { layerName });
  const name = (at: Point, text: string) =>
    writer.addText(point3d(...toMm(at), 0), nameHeight, text, {
      layerName: 'name',
      horizontalAlignment: TextHorizontalAlignment.Center,
      verticalAlignment: TextVerticalAlignment.Middle,
      secondAlignmentPoint: point3d(...toMm(at), 0),
    });
  return { closed, open, shape, circle, name };
}

type Drawer = ReturnType<typeof drawer>;

function drawPiece(draw: Drawer, piece: PacketPiece): void {
  const shape = piece.whole ? { outer: piece.fullTile, holes: [] } : piece.shape;
  draw.shape(piece.whole ? 'tile-whole' : 'tile-cut', shape);
  draw.name(poleOfInaccessibility(shape, ticksPerMm), piece.id);
}

function drawRoom(draw: Drawer, surface: PacketSurface): void {
  for (const edge of surface.edges.filter(
    ({ id }) => !surface.obstacles.some(({ name }) => id.startsWith(`${name}:`)),
  ))
    draw.open(edge.id.endsWith(':line') ? 'opening' : 'wall', edge.from, edge.to);
  for (const { circle, ring } of surface.obstacles)
    if (circle) draw.circle('obstacle', circle.centre, circle.radius);
    else draw.closed('obstacle', ring);
}

/**
 * A surface's plan as DXF (release 2007, AC1021) in millimetres, in the room's frame, one layer a kind of thing:
 * walls, openings, obstacles, whole and cut tiles as closed outlines, chalk lines, soft joints, and the pieces' names.
 */
export function planDxf(surface: PacketSurface): string {
  const writer = new DxfWriter();
  writer.setUnits(Units.Millimeters);
  for (const [name, colour] of Object.entries(layers)) writer.addLayer(name, colour, 'Continuous');
  const draw = drawer(writer, millimetres(surface.turn));
  drawRoom(draw, surface);
  for (const piece of surface.pieces) drawPiece(draw, piece);
  for (const { from, to } of surface.chalk.lines) draw.open('chalk', from, to);
  for (const { parts } of surface.movement?.lines ?? [])
    for (const { from, to } of parts) draw.open('soft-joint', from, to);
  return writer.stringify();
}
