/** Pictures of real sheets of which the README shows some and the tests compare all: name → page under the output. */
export const goldenSheets: Readonly<Record<string, string>> = {
  'job-sheet': 'fernlea-boot-room/job-sheet.html',
  'set-out': 'fernlea-boot-room/set-out.html',
  plan: 'fernlea-boot-room/layout-plan.html',
  'hard-cuts': 'fernlea-boot-room/hard-cuts.html',
  'saw-list': 'fernlea-boot-room/saw-list.html',
  'care-sheet': 'fernlea-boot-room/care-sheet.html',
  'base-sheet': 'fernlea-boot-room/base-sheet.html',
  heights: 'fernlea-boot-room/heights.html',
  zone: 'fernlea-boot-room/zone-1.html',
  'tile-sheet': 'fernlea-boot-room/tile-sheet.html',
  calendar: 'fernlea-boot-room/calendar.html',
  tally: 'fernlea-boot-room/material-tally.html',
  labels: 'fernlea-boot-room/labels.html',
  'kitchen-plan': 'quarry-kitchen/layout-plan.html',
  'kitchen-starts': 'quarry-kitchen/alternatives.html',
  'bath-choice': 'rowan-bath/choice-sheet.html',
  'hall-plan': 'almond-hall/layout-plan.html',
  'hall-cuts': 'almond-hall/hard-cuts.html',
  'hall-saw-list': 'almond-hall/saw-list.html',
  'bath-set-out': 'rowan-bath/set-out.html',
  'bath-measuring': 'rowan-bath/measuring.html',
};

/** Folder of the pictures in the program's folder. */
export const goldenFolder = 'test/sheets/golden';
