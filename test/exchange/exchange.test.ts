import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import DxfParser, { type IEntity } from 'dxf-parser';
import { convertIcsCalendar } from 'ts-ics';
import { describe, expect, test } from 'vitest';
import { exchangeFiles } from '../../src/exchange/exchangeFiles.ts';
import { ringArea, shapeArea } from '../../src/geometry/index.ts';
import { readJob } from '../../src/job/readJob.ts';
import { makePacket } from '../../src/packet/makePacket.ts';
import type { Packet } from '../../src/packet/Packet.ts';
import { readWords } from '../../src/site/words.ts';

const home = join(import.meta.dirname, '../..');
const words = readWords(join(home, 'layouts/words'));

function packetOf(slug: string, folder = 'jobs'): Packet {
  const file = `${folder}/${slug}/job.yaml`;
  const made = makePacket(readJob(readFileSync(join(home, file), 'utf8'), file).job!);
  if ('problems' in made) throw new Error(JSON.stringify(made.problems));
  return made.packet;
}

const textOf = (packet: Packet, name: string, lang = 'en') =>
  exchangeFiles(packet, words.say(lang)).find((file) => file.name === name)!.text;

interface Polyline extends IEntity {
  readonly vertices: readonly { readonly x: number; readonly y: number }[];
}

const packets = ['fernlea-boot-room', 'quarry-kitchen'].map((slug) => packetOf(slug));

describe.each(packets.map((packet) => [packet.job.slug, packet] as const))(
  '%s as DXF, read by another library',
  (_, packet) => {
    const [surface] = packet.surfaces;
    const drawing = new DxfParser().parseSync(textOf(packet, 'plan.dxf'))!;
    const on = (layer: string) => drawing.entities.filter((entity) => entity.layer === layer);
    const areaOf = (entity: IEntity) =>
      ringArea((entity as Polyline).vertices.map(({ x, y }) => [x, y] as const));

    test('is in millimetres (group code $INSUNITS 4)', () => {
      expect(drawing.header.$INSUNITS).toBe(4);
    });

    test('has a closed outline for each whole tile and a name for each piece', () => {
      expect(on('tile-whole')).toHaveLength(surface!.pieces.filter(({ whole }) => whole).length);
      const names = on('name').map((entity) => (entity as IEntity & { text: string }).text);
      expect(names.sort()).toEqual(surface!.pieces.map(({ id }) => id).sort());
    });

    test('covers what the packet covers, to a square millimetre a piece', () => {
      const drawn = [...on('tile-whole'), ...on('tile-cut')].reduce((sum, one) => sum + areaOf(one), 0);
      const laid = surface!.pieces.reduce(
        (sum, { whole, fullTile, shape }) => sum + (whole ? ringArea(fullTile) : shapeArea(shape)),
        0,
      );
      expect(Math.abs(drawn - laid / 320 ** 2)).toBeLessThan(surface!.pieces.length);
    });

    test('has the walls at their true lengths', () => {
      const total = on('wall').reduce((sum, entity) => {
        const [a, b] = (entity as Polyline).vertices;
        return sum + Math.hypot(b!.x - a!.x, b!.y - a!.y);
      }, 0);
      const walls = surface!.edges
        .filter(
          ({ id }) =>
            !id.endsWith(':line') && !surface!.obstacles.some(({ name }) => id.startsWith(`${name}:`)),
        )
        .reduce((sum, { from, to }) => sum + Math.hypot(to[0] - from[0], to[1] - from[1]) / 320, 0);
      expect(Math.abs(total - walls)).toBeLessThan(0.1);
    });
  },
);

test('a floor with soft joints has them on a layer of their own, at their true lengths', () => {
  const packet = packetOf('patio-forty-feet-long', 'test/cases');
  const drawing = new DxfParser().parseSync(textOf(packet, 'plan.dxf'))!;
  const drawn = drawing.entities
    .filter(({ layer }) => layer === 'soft-joint')
    .map((entity) => {
      const [a, b] = (entity as Polyline).vertices;
      return Math.hypot(b!.x - a!.x, b!.y - a!.y);
    });
  const laid = packet.surfaces[0]!.movement!.lines.flatMap(({ parts }) =>
    parts.map(({ from, to }) => Math.hypot(to[0] - from[0], to[1] - from[1]) / 320),
  );
  expect(laid.length).toBeGreaterThan(0);
  expect(drawn.map((length, i) => Math.abs(length - laid[i]!) > 0.01)).toEqual(laid.map(() => false));
});

describe.each(packets.map((packet) => [packet.job.slug, packet] as const))(
  '%s as iCalendar, read by another library',
  (_, packet) => {
    const read = (lang: string) =>
      convertIcsCalendar(undefined, textOf(packet, 'calendar.ics', lang)).events ?? [];

    test('has an event for each entry, at the same clock time', () => {
      expect(read('en').map(({ start }) => start.date.toISOString().slice(0, 16))).toEqual(
        packet.calendar.map(({ from }) => from),
      );
    });

    test("floats: no zone moves eight o'clock", () => {
      expect(textOf(packet, 'calendar.ics')).not.toMatch(/TZID|DTSTART:[0-9T]+Z/);
    });

    test('speaks the language that is asked', () => {
      expect(read('es').map(({ summary }) => summary)).not.toEqual(read('en').map(({ summary }) => summary));
    });

    test('is the same each time', () => {
      expect(textOf(packet, 'calendar.ics')).toBe(textOf(packet, 'calendar.ics'));
    });
  },
);

describe('a plan as SVG', () => {
  const svg = textOf(packets[0]!, 'plan.svg');

  test('names every piece', () => {
    const missing = packets[0]!.surfaces[0]!.pieces.filter(({ id }) => !svg.includes(`>${id}<`));
    expect(missing.map(({ id }) => id)).toEqual([]);
  });

  test('is well-formed XML of the SVG namespace with a size in millimetres', () => {
    expect(svg).toMatch(/^<svg xmlns="http:\/\/www.w3.org\/2000\/svg" width="[\d.]+mm" height="[\d.]+mm"/);
  });
});

test('several surfaces have numbered plans', () => {
  const [packet] = packets;
  const two = { ...packet!, surfaces: [packet!.surfaces[0]!, packet!.surfaces[0]!] };
  expect(exchangeFiles(two, words.say('en')).map(({ name }) => name)).toEqual([
    'cuts.csv',
    'plan-1.svg',
    'plan-1.dxf',
    'plan-2.svg',
    'plan-2.dxf',
    'calendar.ics',
  ]);
});
