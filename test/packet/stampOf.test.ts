import fc from 'fast-check';
import { expect, test } from 'vitest';
import { stampOf } from '../../src/packet/stampOf.ts';

test('a stamp is six characters that cannot be misread', () => {
  fc.assert(
    fc.property(fc.string(), (content) => {
      expect(stampOf(content)).toMatch(/^[2-9ACDEFHJKLMNPRTUVWXY]{6}$/);
    }),
    { seed: 1 },
  );
});

test('ten thousand jobs that differ in one figure get ten thousand stamps but for a handful', () => {
  const stamps = new Set(Array.from({ length: 10_000 }, (_, i) => stampOf(`wall: ${i} mm`)));
  expect(stamps.size).toBeGreaterThan(9_990);
});
