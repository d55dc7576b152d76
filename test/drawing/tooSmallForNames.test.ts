import { describe, expect, test } from 'vitest';
import { ratios } from '../../src/drawing/pickScale.ts';
import { pieceNames } from '../../src/drawing/pieceNames.ts';
import { scaleFor } from '../../src/drawing/Scale.ts';
import { tooSmallForNames } from '../../src/drawing/tooSmallForNames.ts';
import { bootRoom, type FixtureRoom, surfaceOf } from './fixture.ts';

const rooms: Readonly<Record<string, FixtureRoom>> = {
  'the boot room': bootRoom,
  'small tiles': { ...bootRoom, tile: [36000, 18000] },
  'mosaic at 30°': { ...bootRoom, tile: [22000, 22000], joint: 640, turn: 30 },
};

describe.each(Object.entries(rooms))('where names of whole tiles can be read: %s', (_name, room) => {
  const surface = surfaceOf(room);
  const scaleAt = (ratio: number) => scaleFor(surface.outline, surface.turn, ratio, [0, 0]);
  const saidAt = (ratio: number) => tooSmallForNames(surface.pieces, scaleAt(ratio));
  const empty = { paper: { left: -1e4, bottom: -1e4, right: 1e4, top: 1e4 }, outline: [], taken: [] };
  const foundAt = (ratio: number) => pieceNames(surface.pieces, scaleAt(ratio), false, empty).counted;

  test('a scale is passed over only where names find no place on empty paper either', () => {
    const wrongly = ratios.inches.filter((ratio) => saidAt(ratio) && !foundAt(ratio));
    expect(wrongly).toEqual([]);
  });

  test('some scales are passed over, others are not', () => {
    const said = [...ratios.inches, 400].map(saidAt);
    expect(new Set(said)).toEqual(new Set([true, false]));
  });

  test('a scale larger than a legible one is legible', () => {
    const said = [...ratios.inches].sort((a, b) => a - b).map(saidAt);
    expect([...said].sort()).toEqual(said);
  });
});
