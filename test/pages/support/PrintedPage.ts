/** A box on a page in points, 72 an inch, from the lower left corner. */
export interface Box {
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
  readonly top: number;
}

/** A run of letters of one font on one line. */
export interface Words {
  readonly text: string;
  readonly font: string;
  /** Height of the type in points. */
  readonly size: number;
  /** Its letters by the height of a capital. */
  readonly box: Box;
}

export interface PrintedPage {
  readonly number: number;
  readonly width: number;
  readonly height: number;
  readonly words: readonly Words[];
  /** All text in the order in which a reader takes it out. */
  readonly text: string;
  /** Outer boxes of drawn paths. */
  readonly paths: readonly Box[];
}

export interface PrintedFile {
  readonly pages: readonly PrintedPage[];
  readonly info: Readonly<Record<string, unknown>>;
  readonly outline: readonly string[];
  readonly tagged: boolean;
  /** Fonts the file carries, without the mark of a subset. */
  readonly fonts: readonly string[];
}
