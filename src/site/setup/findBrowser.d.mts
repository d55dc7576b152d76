export function fetchedBrowser(folder: string): string | undefined;
export function findBrowser(env: NodeJS.ProcessEnv, fetched: string): string | undefined;
