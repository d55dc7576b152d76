export function nodeProblem(version: string, packageFile: string): string | undefined;
