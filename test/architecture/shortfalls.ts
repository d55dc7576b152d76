export interface Shortfall {
  readonly name: string;
  readonly most: number;
  readonly why: string;
}

/** Functions over 60 lines that are known, with the lines they may have and why. Empty is what we want. */
export const longFunctions: readonly Shortfall[] = [];

/** Files that bear the name of their subject because no export of theirs is the main one, and what holds their exports together. */
export const subjects: Readonly<Record<string, string>> = {
  'calendar/localTime.ts': 'local time as minutes, and back',
  'calendar/daytime.ts': 'moves a time of the night to when people are up',
  'calendar/workingTime.ts': 'steps through the working hours of a week',
  'care/careLines.ts': 'what to do and what not to do are two lists of the same kind of line',
  'cuts/edgeFacts.ts': 'small facts of an outline that several readers of cuts ask for',
  'cuts/pocketSizes.ts': 'a notch and a U are both pockets in a tile',
  'drawing/baseMarks.ts': 'the marks of what was found on a base',
  'drawing/boxes.ts': 'boxes round words, and whether they touch',
  'drawing/cardMarks.ts': 'the marks of a hard-cut card, layer by layer',
  'drawing/cutTileMarks.ts': 'the marks of a tile that is sawn, layer by layer',
  'drawing/cardSizes.ts': 'figures and dimension lines of a hard-cut card',
  'drawing/chalkMarks.ts': 'chalk lines and the letters of the four quarters',
  'drawing/cutFrame.ts': 'the tile of a cut as it lies on its card',
  'drawing/nameBlock.ts': 'a name with its cut number, as one block to place',
  'drawing/pieceMarks.ts': 'how a piece looks on a plan',
  'drawing/roomMarks.ts': 'the marks of a room, layer by layer',
  'drawing/furtherMarks.ts': 'chalk lines beside the first two',
  'drawing/zoneArrows.ts': 'the arrows of a zone: where to begin and where to leave',
  'drawing/sectionParts.ts': 'the parts that a section through the layers is put together of',
  'drawing/shapes.ts': 'the plain shapes that other drawings use',
  'drawing/signs.ts': 'small signs that other drawings use',
  'job/sections/basePlaces.ts': 'cracks, hollow spots and readings, each with its place on the floor',
  'job/sections/measured.ts': 'what is read of a surface beside its walls and diagonals',
  'job/values/calendarValues.ts': 'values of the calendar: date, weekdays, hours',
  'job/values/numbers.ts': 'values without a unit, or with degrees',
  'job/values/quantities.ts': 'values with a unit that is no length',
  'layout/chalk/chalkLine.ts': 'a joint long enough to snap a line on',
  'layout/faults/limits.ts': 'from where on a cut counts as bad',
  'layout/start/axisChoices.ts': 'the plan of one axis and the choices it offers',
  'layout/start/mainRuns.ts': 'the main run of each axis',
  'materials/layerTops.ts': 'heights of layers above the bare base',
  'room/fitRoom.ts': 'the two ways to a shape: the walk round and the fit of all readings',
  'room/quantiles.ts': 'limits of chi-square, of Student’s t and of tau',
  'room/openingProblems.ts': 'problems of doorways',
  'site/cardStore.ts': 'the card of a job, stored between builds',
  'site/commands/bench.ts': 'a command exports run; its file is the name that is typed',
  'site/commands/build.ts': 'a command exports run; its file is the name that is typed',
  'site/commands/check.ts': 'a command exports run; its file is the name that is typed',
  'site/commands/dev.ts': 'a command exports run; its file is the name that is typed',
  'site/commands/goldens.ts': 'a command exports run; its file is the name that is typed',
  'site/commands/new.ts': 'a command exports run; its file is the name that is typed',
  'site/commands/test.ts': 'a command exports run; its file is the name that is typed',
  'site/assetFiles.mjs': 'where fonts and styles lie, for the build and for the pages',
  'trade/lineError.ts': 'how far a snapped line may lie off, from its marks',
  'trade/houseYear.ts': 'what the year of a house warns of',
  'trade/waiting.ts': 'how long each step waits for the one before',
  'trade/wetSlip.ts': 'the least friction of a wet floor, a fact without a function',
  'zones/seamsOf.ts': 'the joints along which a floor is parted, as wished or equal',
};
