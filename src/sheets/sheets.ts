import { careSheet } from './careSheet.ts';
import { calendarSheet } from './calendarSheet.ts';
import { doorSign } from './doorSign.ts';
import { hardCuts } from './hardCuts.ts';
import { jobSheet } from './jobSheet.ts';
import { layoutPlan } from './layoutPlan.ts';
import { alternatives } from './alternatives.ts';
import { materialTally } from './materialTally.ts';
import { measuringSheet } from './measuringSheet.ts';
import { recordSheet } from './recordSheet.ts';
import { sawList } from './sawList.ts';
import { setOut } from './setOut.ts';
import type { Sheet } from './Sheet.ts';
import { tileSheet } from './tileSheet.ts';
import { zoneSheet } from './zoneSheet.ts';

/** Every kind of sheet, in the order in which the packet is bound: hard cuts before the saw list, since they want the spares. */
export const sheets: readonly Sheet[] = [
  jobSheet,
  hardCuts,
  setOut,
  layoutPlan,
  sawList,
  zoneSheet,
  tileSheet,
  alternatives,
  materialTally,
  calendarSheet,
  doorSign,
  careSheet,
  recordSheet,
  measuringSheet,
];
