import { expect, test } from 'vitest';
import { demos, words } from './demos.ts';

test.each(demos)(
  'the record of $slug asks when it was sealed only where it is sealed',
  ({ packet, sheets }) => {
    const { data } = sheets.find(({ template }) => template === 'record')!;
    const asks = JSON.stringify(data).includes(words.say(packet.spec.print.owner)('record.sealedOn'));
    expect(asks).toBe(packet.spec.products.sealer.kind !== 'none');
  },
);
