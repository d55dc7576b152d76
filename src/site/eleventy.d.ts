/** What we use of Eleventy, which comes without types. */
declare module '@11ty/eleventy' {
  export class Eleventy {
    constructor(input: string, output: string, options: object);
    disableLogger(): void;
    write(): Promise<void>;
    toJSON(): Promise<{ outputPath: string | false; content: string }[]>;
    init(): Promise<void>;
    /** Builds and watches; gives a function that builds again because of a path. */
    watch(): Promise<(path: string) => Promise<void>>;
    stopWatch(): Promise<void>;
    serve(port: number): Promise<void>;
  }
}
