import { describe, expect, test } from 'vitest';
import { drawLiveRoom } from '../../src/form/drawLiveRoom.ts';
import { treeOf } from '../../src/form/fieldValues.ts';
import { makeLiveRoom, readForm } from '../../src/form/makeLiveRoom.ts';
import { startText } from '../../src/form/startText.ts';
import { makeRoom } from '../../src/room/makeRoom.ts';
import { demo } from './support.ts';

const live = (text: string) => makeLiveRoom(treeOf(text), ['floor'], readForm(text));
const states = (text: string) => Object.fromEntries(live(text)!.walls.map(({ id, state }) => [id, state]));
const mm = (ticks: number) => Math.round(ticks / 320);

describe('the room that the form draws', () => {
  const text = demo('fernlea-boot-room');

  test('is the room of the packet', () => {
    const { job } = readForm(text);
    const made = makeRoom(job!.surfaces[0]!, 'inches');
    expect('room' in made && made.room.corners).toEqual(live(text)!.corners.map(({ at }) => at));
    expect(live(text)!.obstacles.map(({ name }) => name)).toEqual(['sink cabinet', 'flange', 'pipe']);
    expect(live(text)!.doors.length).toBeGreaterThan(2);
  });

  test('is the same while other parts of the file are wrong', () => {
    const unfinished = text
      .replace('title: Boot room and WC', 'title:')
      .replace('joint: 3/16 in', 'joint: 3');
    expect(readForm(unfinished).problems).toHaveLength(2);
    expect(live(unfinished)!.corners).toEqual(live(text)!.corners);
  });

  test('leaves out what cannot be read and keeps the rest', () => {
    const unfinished = text.replace('circle: 7 in', 'circle: seven');
    expect(live(unfinished)!.obstacles.map(({ name }) => name)).toEqual(['sink cabinet', 'pipe']);
  });

  test('has walls nobody read at a length that closes it: arithmetic', () => {
    const begun = startText('L', 'mm', '2027-03-01')
      .replace('A-B:', 'A-B: 4 m')
      .replace('C-D:', 'C-D: 1500 mm')
      .replace('B-C:', 'B-C: 2 m')
      .replace('D-E:', 'D-E: 1 m');
    expect(states(begun)).toEqual({
      'A-B': 'read',
      'B-C': 'read',
      'C-D': 'read',
      'D-E': 'read',
      'E-F': 'unread',
      'F-A': 'unread',
    });
    expect(live(begun)!.corners.map(({ at }) => at.map(mm))).toEqual([[0, 0], [4000, 0], [4000, 2000], [2500, 2000], [2500, 3000], [0, 3000]]); // biome-ignore format: corners on a line
  });

  test.each(['rectangle', 'L', 'T', 'other'] as const)('is drawn before anything is read: %s', (shape) => {
    expect(drawLiveRoom(live(startText(shape, 'inches', '2027-03-01'))!, 'a room')).toContain('<svg');
  });

  test('marks a wall that the others contradict, where the readings make no room', () => {
    const misread = text.replace('6 ft 4 3/8', '8 ft 4 3/8');
    const problem = readForm(misread).problems[0]!;
    expect(problem.path.slice(0, 2)).toEqual(['floor', 'walls']);
    expect(states(misread)[String(problem.path[2])]).toBe('suspect');
    expect(drawLiveRoom(live(misread)!, 'a room')).toContain('>?</text>');
  });

  test('is none where there are no walls', () => {
    for (const nothing of [
      '',
      'title: x',
      'floor: 3',
      'floor: {walls: none}',
      '{',
      'floor: {walls: {A-B: 3 m}}',
    ])
      expect(live(nothing)?.corners.length ?? 0, nothing).toBeLessThan(3);
  });
});
