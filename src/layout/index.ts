export * from './Layout.ts';
export * from './makeLayout.ts';
