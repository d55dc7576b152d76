import type { Ticks } from '../measure/index.ts';
import type { Fact } from './Fact.ts';
import { inches } from './inches.ts';

/** The width that a person needs to pass sideways. */
export const PASSAGE: Fact<Ticks> = { value: inches(12), mark: 'P', source: 'practice' };

/** How far tile is laid beyond the floor that one can stand on. */
export const LAYING_REACH: Fact<Ticks> = { value: inches(20), mark: 'P', source: 'practice' };

/** The width that a setter needs to go to and fro with boxes and buckets, and to kneel. */
export const WORKWAY: Fact<Ticks> = { value: inches(24), mark: 'P', source: 'practice' };
