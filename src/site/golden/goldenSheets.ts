/** Pictures of real sheets that the README shows and the tests compare: name → page under the output. */
export const goldenSheets: Readonly<Record<string, string>> = {
  'job-sheet': 'fernlea-boot-room/job-sheet.html',
  'set-out': 'fernlea-boot-room/set-out.html',
  plan: 'fernlea-boot-room/layout-plan.html',
  'hard-cuts': 'fernlea-boot-room/hard-cuts.html',
  'saw-list': 'fernlea-boot-room/saw-list.html',
  'care-sheet': 'fernlea-boot-room/care-sheet.html',
};

/** Folder of the pictures in the program's folder. */
export const goldenFolder = 'test/sheets/golden';
