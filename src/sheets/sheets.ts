import { alternatives } from './alternatives.ts';
import { assumed } from './assumed.ts';
import { baseSheet } from './baseSheet.ts';
import { calendarSheet } from './calendarSheet.ts';
import { careSheet } from './careSheet.ts';
import { choiceSheet } from './choiceSheet.ts';
import { doorSign } from './doorSign.ts';
import { hardCuts } from './hardCuts.ts';
import { heights } from './heights.ts';
import { jobSheet } from './jobSheet.ts';
import { labels } from './labels.ts';
import { layoutPlan } from './layoutPlan.ts';
import { materialTally } from './materialTally.ts';
import { measuringSheet } from './measuring/measuringSheet.ts';
import { recordSheet } from './recordSheet.ts';
import { rowSums } from './rowSums.ts';
import type { Sheet } from './Sheet.ts';
import { sawList } from './sawList.ts';
import { setOut } from './setOut.ts';
import { startsCurve } from './startsCurve.ts';
import { templates } from './templates.ts';
import { tileSheet } from './tileSheet.ts';
import { zoneSheet } from './zoneSheet.ts';

/**
 * Every kind of sheet, in the order in which it is bound: first what the crew works from, the base before a line is snapped on it, hard cuts before
 * the saw list since they want the spares; then what the office counts; then what the owner keeps.
 */
export const sheets: readonly Sheet[] = [
  jobSheet,
  baseSheet,
  hardCuts,
  templates,
  labels,
  setOut,
  layoutPlan,
  sawList,
  zoneSheet,
  materialTally,
  alternatives,
  heights,
  tileSheet,
  rowSums,
  startsCurve,
  choiceSheet,
  careSheet,
  recordSheet,
  calendarSheet,
  doorSign,
  assumed,
  measuringSheet,
];
