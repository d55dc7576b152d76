import { join } from 'node:path';

/** The folders a build reads and writes. */
export interface Places {
  /** The program: layouts, sources, packages. */
  readonly home: string;
  readonly layouts: string;
  readonly jobs: string;
  readonly output: string;
  /** Must lie on the same disk as `output`, so that a finished folder can be moved there in one step. */
  readonly cache: string;
  /** PDFs that were printed before, by what they were printed from. */
  readonly pdfs: string;
}

/** Usual places under one folder; tests give another `root` than the program's own. */
export function placesUnder(home: string, root = home): Places {
  return {
    home,
    layouts: join(home, 'layouts'),
    jobs: join(root, 'jobs'),
    output: join(root, 'output'),
    cache: join(root, '.cache'),
    pdfs: join(root, '.cache', 'pdf'),
  };
}
