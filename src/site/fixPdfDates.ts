/** Written instead of the clock's time, so that the same pages give the same bytes. */
const fixed = 'D:20000101000000';

/**
 * Sets the dates in a PDF's own description to a fixed one of the same length: a PDF is a table of byte offsets,
 * so nothing in it may move.
 */
export function fixPdfDates(pdf: Uint8Array): Uint8Array {
  const text = Buffer.from(pdf).toString('latin1');
  const same = text.replace(/\/(CreationDate|ModDate) \(D:\d{14}/g, (_, key: string) => `/${key} (${fixed}`);
  return Buffer.from(same, 'latin1');
}
