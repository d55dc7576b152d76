import type { Sheet } from '../Sheet.ts';
import { blankRooms } from './blankRooms.ts';
import { blankVisit } from './blankVisit.ts';
import { measuredRooms } from './measuredRooms.ts';

/** What was measured, and how good is it? What this room's readings say; then blank pages for the next first visit. */
export const measuringSheet: Sheet = {
  name: 'measuring',
  for: 'setter',
  bundles: ['office', 'packet', 'measuring'],
  speaks: 'crew',
  make: (context) => [...measuredRooms(context), ...blankRooms(context), ...blankVisit(context)],
};
