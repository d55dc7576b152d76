export * from './Drawing.ts';
export * from './drawPlan.ts';
export * from './drawSetOut.ts';
export * from './pickScale.ts';
