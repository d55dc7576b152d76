import { lineThroughShape, type Point, type Shape, shapeArea } from '../geometry/index.ts';
import { chipArea } from '../job/chipArea.ts';
import { chipSides } from '../job/chipSides.ts';
import type { GroutSpec } from '../job/Job.ts';
import type { MovementLine } from '../layout/movement/Movement.ts';
import { areaM2Of, litresOf, TICKS_PER_MM } from '../measure/index.ts';
import { jointShareOf } from '../pattern/index.ts';
import { GROUT_DENSITY, GROUT_WASTE, groutGrade, groutVolume, type Step } from '../trade/index.ts';
import { fieldAreaM2 } from './fieldRuns.ts';
import type { Laid } from './laidSurfaces.ts';
import type { Material } from './Material.ts';
import { packages, rounded } from './rounded.ts';

/** Grout for all surfaces by the exact volume of their joints, each as deep as its tile is thick. */
export function groutLine(grout: GroutSpec, surfaces: readonly Laid[]): Material {
  const parts = surfaces.flatMap((laid) => [...jointsOf(laid), ...borderJoints(laid)]);
  const litres = parts.reduce((sum, part) => sum + part.litres, 0);
  const massKg = litres * grout.kgPerLitre * (1 + GROUT_WASTE.value);
  const buy = packages(massKg / grout.bagKg);
  const fromSheet = grout.stated.includes('kgPerLitre');
  const name = [grout.name, grout.colour].filter((part) => part !== undefined).join(', ');
  return {
    what: 'grout',
    ...(name === '' ? {} : { name }),
    sum: [
      ...parts.map(({ step }) => step),
      {
        code: 'material.grout.sum.mass',
        figures: {
          groutKgPerLitre: grout.kgPerLitre,
          groutLitres: litres,
          wasteShare: GROUT_WASTE.value,
          massKg,
        },
      },
      { code: 'material.grout.sum.bags', figures: { bagKg: grout.bagKg, bagCount: buy } },
      ...gradeSteps(grout, surfaces),
      { code: 'material.grout.sum.oneBatch', figures: {} },
    ],
    rate: { value: grout.kgPerLitre, unit: 'kgPerLitre' },
    mark: fromSheet ? 'job' : GROUT_DENSITY.mark,
    source: fromSheet ? 'job' : GROUT_DENSITY.source,
    amount: massKg,
    unit: 'kg',
    buy,
    buyUnit: 'bag',
  };
}

/** Litres with how they came about. */
interface Part {
  readonly litres: number;
  readonly step: Step;
}

/** Joints of the pattern over the whole of its floor, then what of them is no grout. */
function jointsOf(laid: Laid): readonly Part[] {
  const { spec, tile, layout } = laid;
  const joint = layout.pattern.joint;
  const areaM2 = layout.inner ? areaM2Of(areaOf(layout.inner)) : fieldAreaM2(layout);
  // Round a rectangle runs one joint; between other tiles and chips all that is no face is joint.
  const face = layout.pattern.inCourses && !tile.chip ? chipSides(tile, joint) : undefined;
  const rate = face
    ? groutVolume({ ...face, joint, depth: tile.thickness })
    : jointShare(laid) * (tile.thickness / TICKS_PER_MM);
  const own = {
    surface: spec.name,
    joint,
    depth: tile.thickness,
    groutLitresPerM2: rounded(rate, 4),
    areaM2,
    groutLitres: rate * areaM2,
  };
  const step = face
    ? { code: 'material.grout.sum.volume', figures: { ...own, ...face } }
    : { code: 'material.grout.sum.repeat', figures: { ...own, jointShare: rounded(jointShare(laid), 4) } };
  return [{ litres: rate * areaM2, step }, ...softJointsOff(laid, rate)];
}

/** What of the floor is joint: of the repeat of its pattern, or of a sheet of round or hexagon chips. */
function jointShare({ tile: { length, width, chips = [1, 1], chip }, layout: { pattern } }: Laid): number {
  if (!chip) return jointShareOf(pattern);
  const sheet = (length + pattern.joint) * (width + pattern.joint);
  return 1 - (chips[0] * chips[1] * chipArea(chip)) / sheet;
}

/** What soft joints have of the grout that was reckoned for the whole floor: their joint, and the share of what they are wider. */
function softJointsOff({ spec, tile, layout }: Laid, rate: number): Part[] {
  const { lines = [], laid = false } = layout.movement ?? {};
  if (lines.length === 0) return [];
  const { joint } = layout.pattern;
  const long = lines.reduce((sum, { length }) => sum + length, 0);
  const inField = layout.inner ? (line: MovementLine) => lengthIn(layout.inner!, line) : lengthOf;
  const wider = (length: (line: MovementLine) => number) =>
    lines.reduce((sum, line) => sum + length(line) * (line.width - joint), 0);
  // What lies apart from the field is reckoned by what no piece covers, so all of a soft joint there.
  const apart = wider(lengthOf) - wider(inField);
  const litres = -(
    litresOf((long * joint + apart) * tile.thickness) +
    rate * areaM2Of(laid ? wider(inField) : 0)
  );
  const runMetres = rounded(long / (1000 * TICKS_PER_MM), 3);
  const figures = { surface: spec.name, runMetres, groutLitres: litres };
  return [{ litres, step: { code: 'material.grout.sum.soft', figures } }];
}

const lengthOf = ({ length }: MovementLine) => length;

/** How much of a soft joint lies in a part of the field, in ticks. */
function lengthIn(shapes: readonly Shape[], { axis, at }: MovementLine): number {
  const [point, along]: readonly [Point, Point] = axis === 'along' ? [[at, 0], [0, 1]] : [[0, at], [1, 0]]; // biome-ignore format: a point and a way
  return shapes
    .flatMap((shape) => lineThroughShape(shape, point, along))
    .reduce((sum, { from, to }) => sum + to - from, 0);
}

/** Joints of a border and of inlays, and the ones between them and the field: what of its floor no piece covers. */
function borderJoints({ spec, tiles, layout }: Laid): Part[] {
  const { inner, field, pieces, left, pattern } = layout;
  if (!inner) return [];
  const depth = tiles.find(({ key }) => key === pieces.find((piece) => piece.border)!.tile)?.thickness ?? 0;
  const own = pieces.filter((piece) => piece.border).map(({ shape }) => shape);
  const area = areaOf(field) - areaOf(inner) - areaOf(own) - areaOf(left.map(({ shape }) => shape));
  const litres = litresOf(area * depth);
  const runMetres = rounded(area / pattern.joint / (1000 * TICKS_PER_MM), 3);
  const figures = { surface: spec.name, joint: pattern.joint, runMetres, depth, groutLitres: litres };
  return [{ litres, step: { code: `material.grout.sum.${layout.border ? 'border' : 'inlay'}`, figures } }];
}

function areaOf(shapes: readonly Shape[]): number {
  return shapes.reduce((sum, shape) => sum + shapeArea(shape), 0);
}

/** Cement grout comes sanded or not by the width of the joint; epoxy does not. */
function gradeSteps(grout: GroutSpec, surfaces: readonly Laid[]): readonly Step[] {
  if (grout.kind !== 'cement') return [];
  const grades = new Map(
    surfaces.map(({ layout }) => [groutGrade(layout.pattern.joint), layout.pattern.joint]),
  );
  return [...grades].map(([grade, joint]) => ({ code: `material.grout.sum.${grade}`, figures: { joint } }));
}
