import { describe, expect, test } from 'vitest';
import { demos } from './demos.ts';

describe.each(demos)('who takes a thing out and puts it back in $slug', ({ packet, sheets }) => {
  const dataOf = <T>(name: string) => sheets.find(({ template }) => template === name)?.data as T;
  const rows = dataOf<{ goes: readonly { what: string; who: string }[] }>('base-sheet').goes;
  const gates = dataOf<{ gates: readonly { what: string }[] }>('job-sheet').gates;

  test('is the same on the job sheet as on the base sheet', () => {
    const named = rows.filter(({ what }) => gates.some((gate) => gate.what.includes(`${what} (`)));
    expect(named.length).toBeGreaterThanOrEqual(packet.base.comesOut.length);
    for (const { what, who } of named)
      expect(gates.map((gate) => gate.what).filter((gate) => gate.includes(`${what} (`))).toEqual([
        expect.stringContaining(`${what} (${who})`),
      ]);
  });
});
