/**
 * The PDF library, for tests that read what was printed. As it comes for older machines it puts its own slow `push`, `parse`
 * and `stringify` in place of the machine's, for all that runs beside it: those are put back.
 */
const { push } = Array.prototype;
const { parse, stringify } = JSON;
// The second half would else be loaded by the first call, and put its own in place again.
// @ts-expect-error The library has types for its first half alone.
await import('pdfjs-dist/legacy/build/pdf.worker.mjs');
export const { getDocument, OPS } = await import('pdfjs-dist/legacy/build/pdf.mjs');
Object.assign(Array.prototype, { push });
Object.assign(JSON, { parse, stringify });
