import type { Row } from '../../../src/cuts/Cut.ts';
import { ringArea, shapeArea } from '../../../src/geometry/index.ts';
import type { Candidate } from '../../../src/layout/Layout.ts';
import type { Packet, PacketSurface } from '../../../src/packet/Packet.ts';

/** A packet as the cases name its parts: lists are keyed by what they are about, equal rows and equal cuts are told once. */
export function summaryOf(packet: Packet) {
  const surfaces = packet.surfaces.map(surfaceSummary);
  const { care, heights, job, defaults } = packet;
  return {
    ...surfaces[0]!,
    job,
    tile: packet.spec.tiles[0]!,
    plan: Object.values(packet.tiles)[0]!,
    limits: keyed(packet.limits, ({ rule }) => rule),
    heights: { ...heights, results: keyed(heights.results, ({ name }) => name) },
    materials: keyed(packet.materials, ({ what }) => what),
    calendar: keyed(packet.calendar, ({ code, zone }) => (zone === undefined ? code : `${code} ${zone}`)),
    care,
    notes: packet.notes.map(({ code, level }) => `${level} ${code}`),
    defaults: Object.fromEntries(defaults.map(({ path, figures }) => [path, figures.value])),
  };
}

function surfaceSummary(surface: PacketSurface) {
  const { start, pieces, faults, left, cuts, zones, adjustment } = surface;
  return {
    pieces: pieces.length,
    whole: pieces.filter(({ whole }) => whole).length,
    cut: pieces.filter(({ whole }) => !whole).length,
    areaM2: surface.areaM2,
    /** Of the smallest piece, as a part of its tile. */
    smallestArea: Math.min(...pieces.map(({ shape, fullTile }) => shapeArea(shape) / ringArea(fullTile))),
    outline: surface.outline,
    start: {
      along: start.along.what,
      across: start.across.what,
      chosen: start.chosen,
      runnerUp: start.runnerUp,
      alternatives: keyed(start.alternatives.map(alternative), ({ key }) => key),
    },
    rows: { along: rowKinds(surface, 'along'), across: rowKinds(surface, 'across') },
    faults: keyed(faults, ({ code, edge }) => (edge ? `${code} ${edge}` : code)),
    left: keyed(left, ({ edge }) => edge),
    cuts: cuts.map(({ pieces: of, sizes, ...cut }) => ({
      ...cut,
      count: of.length,
      sizes: keyed(sizes, ({ what }) => what),
    })),
    kinds: counted(cuts.flatMap(({ kind, pieces: of }) => of.map(() => kind))),
    zones: zones.map(({ pieces: of, ...zone }) => ({ ...zone, count: of.length })),
    chalk: surface.chalk,
    movement: surface.movement,
    obstacles: keyed(surface.obstacles, ({ name }) => name),
    adjustment,
    tapers: keyed(surface.tapers?.walls ?? [], ({ edge }) => edge),
    readings: keyed(adjustment.readings, ({ id }) => id),
  };
}

function alternative({ reason, ...rest }: Candidate) {
  const { code, figures } = reason[0]!;
  const name = code.replace('start.', '');
  return { key: figures.axis ? `${name} ${figures.axis}` : name, ...rest, figures };
}

/** Rows that are made alike, once, with how many there are: what ends them, exact and at the saw, and what lies between. */
function rowKinds({ rows, pieces }: PacketSurface, axis: Row['axis']) {
  const whole = new Set(pieces.filter((piece) => piece.whole).map(({ id }) => id));
  const kinds = rows.filter((row) => row.axis === axis).map((row) => rowKind(row, whole));
  const same = new Map<string, { rows: number; kind: (typeof kinds)[number] }>();
  for (const kind of kinds) {
    const key = JSON.stringify(kind);
    same.set(key, { rows: (same.get(key)?.rows ?? 0) + 1, kind });
  }
  return [...same.values()].map(({ rows: count, kind }) => ({ rows: count, ...kind }));
}

function rowKind({ terms }: Row, whole: ReadonlySet<string>) {
  const of = (what: string) => terms.filter((term) => term.what === what);
  const [tiles, gaps] = [of('piece'), of('gap')];
  const ends = [tiles[0]!, tiles.at(-1)!];
  return {
    ends: ends.map(({ exact }) => exact),
    saw: ends.map(({ saw }) => saw),
    whole: tiles.filter(({ id }) => whole.has(id)).length,
    tiles: tiles.length,
    joints: of('joint').length,
    gaps: gaps.map(({ exact }) => exact),
    sawGaps: gaps.map(({ saw }) => saw),
    length: terms.reduce((sum, { exact }) => sum + exact, 0),
  };
}

/** A list by name; where a name comes twice the second ends in ` 2`. */
function keyed<T>(list: readonly T[], nameOf: (one: T) => string): Record<string, T> {
  const named: Record<string, T> = {};
  for (const one of list) {
    let [name, n] = [nameOf(one), 1];
    while (name in named) name = `${nameOf(one)} ${++n}`;
    named[name] = one;
  }
  return named;
}

function counted(names: readonly string[]): Record<string, number> {
  const counts: Record<string, number> = {};
  for (const name of names) counts[name] = (counts[name] ?? 0) + 1;
  return counts;
}
