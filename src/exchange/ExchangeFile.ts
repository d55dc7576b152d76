/** A file in an open format that other programs read: a view of the packet. */
export interface ExchangeFile {
  readonly name: string;
  readonly text: string;
}
