// A judge that is not the algorithm: the JSTS port of the JTS Topology Suite, and plain random shapes.
import fc from 'fast-check';
import Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
import GeometryFactory from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
import BufferOp from 'jsts/org/locationtech/jts/operation/buffer/BufferOp.js';
import BufferParameters from 'jsts/org/locationtech/jts/operation/buffer/BufferParameters.js';
import DistanceOp from 'jsts/org/locationtech/jts/operation/distance/DistanceOp.js';
import SnapIfNeededOverlayOp from 'jsts/org/locationtech/jts/operation/overlay/snap/SnapIfNeededOverlayOp.js';
import IsValidOp from 'jsts/org/locationtech/jts/operation/valid/IsValidOp.js';
import type { Point, Ring, Shape } from '../../src/geometry/index.ts';

// biome-ignore lint/suspicious/noExplicitAny: the library's own types do not cover its geometry.
type Geometry = any;

const factory = new GeometryFactory();

export function toJsts(shapes: readonly Shape[]): Geometry {
  const polygons = shapes.map((shape) =>
    factory.createPolygon(linear(shape.outer), shape.holes.map(linear) as never),
  );
  return polygons.length === 1 ? polygons[0] : factory.createMultiPolygon(polygons as never);
}

function linear(ring: Ring): Geometry {
  return factory.createLinearRing([...ring, ring[0]!].map(([x, y]) => new Coordinate(x, y)) as never);
}

export const judge = {
  intersection: (a: Geometry, b: Geometry): Geometry => SnapIfNeededOverlayOp.intersection(a, b),
  difference: (a: Geometry, b: Geometry): Geometry => SnapIfNeededOverlayOp.difference(a, b),
  union: (a: Geometry, b: Geometry): Geometry => SnapIfNeededOverlayOp.union(a, b),
  buffer: (a: Geometry, reach: number): Geometry => BufferOp.bufferOp(a, reach),
  /** With corners as sharp as they are, not rounded. */
  grown: (a: Geometry, reach: number): Geometry =>
    BufferOp.bufferOp(
      a,
      reach,
      new BufferParameters(8, BufferParameters.CAP_SQUARE, BufferParameters.JOIN_MITRE, 8),
    ),
  distance: (a: Geometry, b: Geometry): number => DistanceOp.distance(a, b),
  valid: (a: Geometry): boolean => IsValidOp.isValid(a),
};

/** How much of the plane lies in one of two geometries but not in the other. */
export function disagreement(ours: readonly Shape[], theirs: Geometry): number {
  if (ours.length === 0) return theirs.getArea();
  if (theirs.isEmpty()) return toJsts(ours).getArea();
  return SnapIfNeededOverlayOp.symDifference(toJsts(ours), theirs).getArea();
}

/** A simple ring round a middle: one point in each of 3 to 12 directions, in turn, near or far. */
export function starRing(size = 60000): fc.Arbitrary<Ring> {
  return fc
    .tuple(
      fc.integer({ min: -size, max: size }),
      fc.integer({ min: -size, max: size }),
      fc.array(fc.double({ min: 0.15, max: 1, noNaN: true }), { minLength: 3, maxLength: 12 }),
      fc.double({ min: 0, max: 6.28, noNaN: true }),
    )
    .map(([x, y, reaches, turn]) =>
      reaches.map((reach, i): Point => {
        const angle = turn + (2 * Math.PI * i) / reaches.length;
        return [
          Math.round(x + size * reach * Math.cos(angle)),
          Math.round(y + size * reach * Math.sin(angle)),
        ];
      }),
    );
}

/** A convex ring: points on a circle, in turn. */
export function convexRing(size = 60000): fc.Arbitrary<Ring> {
  return fc
    .tuple(
      fc.integer({ min: -size, max: size }),
      fc.integer({ min: -size, max: size }),
      fc.integer({ min: 3, max: 9 }),
      fc.double({ min: 0, max: 6.28, noNaN: true }),
    )
    .map(([x, y, count, turn]) =>
      Array.from({ length: count }, (_, i): Point => {
        const angle = turn + (2 * Math.PI * i) / count;
        return [Math.round(x + size * Math.cos(angle)), Math.round(y + size * Math.sin(angle))];
      }),
    );
}

export function shape(outer: Ring, ...holes: Ring[]): Shape {
  return { outer, holes };
}

export function rectangle(x: number, y: number, width: number, height: number): Ring {
  return [
    [x, y],
    [x + width, y],
    [x + width, y + height],
    [x, y + height],
  ];
}

/** A half ring of rounding along every edge, which is what a result in whole ticks may be off by. */
export function roundingAllowance(...shapes: readonly (readonly Shape[])[]): number {
  let length = 0;
  for (const { outer, holes } of shapes.flat()) {
    for (const ring of [outer, ...holes]) {
      ring.forEach(([x, y], i) => {
        const [u, v] = ring[(i + 1) % ring.length]!;
        length += Math.hypot(u - x, v - y);
      });
    }
  }
  return length;
}
