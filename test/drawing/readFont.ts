import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { inflateSync } from 'node:zlib';

const require = createRequire(import.meta.url);

/** Tables of a WOFF 1.0 file (W3C Recommendation, 2012, section 4), inflated. */
function tablesOf(file: Buffer): Map<string, Buffer> {
  const count = file.readUInt16BE(12);
  const entries = Array.from({ length: count }, (_, i) => {
    const at = 44 + i * 20;
    const [offset, packed, full] = [4, 8, 12].map((by) => file.readUInt32BE(at + by)) as [
      number,
      number,
      number,
    ];
    const data = file.subarray(offset, offset + packed);
    return [file.toString('latin1', at, at + 4), packed < full ? inflateSync(data) : data] as const;
  });
  return new Map(entries);
}

/** Glyph of each character, from a format 4 subtable of `cmap` (OpenType specification). */
function glyphsOf(cmap: Buffer): Map<number, number> {
  const subtables = Array.from({ length: cmap.readUInt16BE(2) }, (_, i) => cmap.readUInt32BE(8 + 8 * i));
  const at = subtables.find((offset) => cmap.readUInt16BE(offset) === 4)!;
  const segments = cmap.readUInt16BE(at + 6) / 2;
  const glyphs = new Map<number, number>();
  for (let s = 0; s < segments; s++) {
    const end = cmap.readUInt16BE(at + 14 + 2 * s);
    const start = cmap.readUInt16BE(at + 16 + 2 * (segments + s));
    const delta = cmap.readUInt16BE(at + 16 + 2 * (2 * segments + s));
    const rangeAt = at + 16 + 2 * (3 * segments + s);
    const range = cmap.readUInt16BE(rangeAt);
    for (let c = start; c <= end && c < 0xffff; c++) {
      const raw = range === 0 ? c : cmap.readUInt16BE(rangeAt + range + 2 * (c - start));
      if (raw !== 0) glyphs.set(c, (raw + delta) & 0xffff);
    }
  }
  return glyphs;
}

/** Advance width of each character in thousandths of the type size, as the font's own tables give it. */
export function readFont(weight: 400 | 700): Map<string, number> {
  const name = `@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-${weight}-normal.woff`;
  const tables = tablesOf(readFileSync(require.resolve(name)));
  const [head, hhea, hmtx] = ['head', 'hhea', 'hmtx'].map((tag) => tables.get(tag)!) as [
    Buffer,
    Buffer,
    Buffer,
  ];
  const unitsPerEm = head.readUInt16BE(18);
  const metrics = hhea.readUInt16BE(34);
  const advance = (glyph: number) =>
    (hmtx.readUInt16BE(Math.min(glyph, metrics - 1) * 4) * 1000) / unitsPerEm;
  return new Map(
    [...glyphsOf(tables.get('cmap')!)].map(([c, glyph]) => [String.fromCodePoint(c), advance(glyph)]),
  );
}
