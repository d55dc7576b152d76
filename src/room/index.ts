export * from './makeRoom.ts';
export * from './Room.ts';
