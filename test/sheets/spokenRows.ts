import { expect } from 'vitest';

/** Every row that a line of found spaces speaks of, as whoever reads it counts on from the first number to the last. */
export function spokenRows(rows: string): readonly string[] {
  return rows.split(', ').flatMap((part) => {
    const [, first = part, last, by = '1'] = /^(\S+) … (\S+)(?: \D*(\d+).*)?$/.exec(part) ?? [];
    if (!last) return [first];
    const [, letters, number, end] = /^(\D*)(\d+)(\D*)$/.exec(first)!;
    const lastNumber = Number(/\d+/.exec(last)![0]);
    expect(last).toBe(`${letters}${lastNumber}${end}`);
    const steps = (lastNumber - Number(number)) / Number(by);
    const step = Number(by) * Math.sign(steps);
    return Array.from(
      { length: Math.abs(steps) + 1 },
      (_, k) => `${letters}${Number(number) + k * step}${end}`,
    );
  });
}
