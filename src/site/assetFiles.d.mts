export const fontFiles: Readonly<Record<string, string>>;
export const styleFolder: string;
