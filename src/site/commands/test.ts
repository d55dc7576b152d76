import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import type { CommandInput } from './CommandInput.ts';

function runScript(home: string, script: string, args: readonly string[], env: NodeJS.ProcessEnv): boolean {
  const file = join(home, 'node_modules', script);
  return spawnSync(process.execPath, [file, ...args], { cwd: home, stdio: 'inherit', env }).status === 0;
}

/** Runs format and lint, types and tests; all of them, whatever fails. `--long` adds the long versions. */
export async function run({ home, args }: CommandInput): Promise<number> {
  const long = args.includes('--long');
  const parts = args.filter((arg) => arg !== '--long');
  const env = long ? { ...process.env, LONG: '1' } : process.env;
  const passed = [
    runScript(home, '@biomejs/biome/bin/biome', ['check', '--error-on-warnings', '.'], env),
    runScript(home, 'typescript/bin/tsc', ['--noEmit'], env),
    runScript(home, 'vitest/vitest.mjs', ['run', ...parts], env),
  ];
  return passed.every(Boolean) ? 0 : 1;
}
