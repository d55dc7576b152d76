/** What every command is started with. */
export interface CommandInput {
  /** Folder of the program. */
  readonly home: string;
  /** Path of a browser, when the command prints and one was found. */
  readonly browser?: string;
  readonly args: readonly string[];
}
