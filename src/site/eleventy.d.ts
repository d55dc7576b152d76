/** What we use of Eleventy, which comes without types. */
declare module '@11ty/eleventy' {
  export class Eleventy {
    constructor(input: string, output: string, options: object);
    disableLogger(): void;
    toJSON(): Promise<{ outputPath: string | false; content: string }[]>;
    watch(): Promise<unknown>;
    serve(port: number): Promise<unknown>;
    init(): Promise<unknown>;
  }
}
