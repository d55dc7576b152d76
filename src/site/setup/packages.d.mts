interface LockFile {
  readonly packages: Readonly<
    Record<string, { readonly version?: string; readonly optional?: boolean; readonly devOptional?: boolean }>
  >;
}
export function packagesMatch(lock?: LockFile, installed?: LockFile): boolean;
export function ensurePackages(home: string): string | undefined;
