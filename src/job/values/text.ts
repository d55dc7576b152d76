import { good, type Reader } from '../shape/Reader.ts';

/** Any text; numbers and yes or no are taken as they were written. */
export const text: Reader<string> = {
  read: (value) => good(String(value).trim()),
  standIn: '',
  json: { type: ['string', 'number', 'boolean'] },
};
