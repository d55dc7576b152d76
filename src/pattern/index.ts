export * from './columnAndRow.ts';
export * from './jointShareOf.ts';
export * from './makePattern.ts';
export * from './Pattern.ts';
export * from './patternProblems.ts';
export * from './patternShares.ts';
export * from './tileOutline.ts';
export * from './tilesOver.ts';
