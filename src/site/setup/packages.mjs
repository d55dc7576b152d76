import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

function readJson(file) {
  return existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')) : undefined;
}

/**
 * Whether what npm has installed is what the lock file asks for. npm writes `node_modules/.package-lock.json`
 * last, so a stopped install is seen as none; optional packages for other machines may be missing.
 */
export function packagesMatch(lock, installed) {
  if (!lock || !installed) return false;
  return Object.entries(lock.packages)
    .filter(([path, wanted]) => path !== '' && !wanted.optional && !wanted.devOptional)
    .every(([path, wanted]) => installed.packages[path]?.version === wanted.version);
}

/** npm itself may have started us; then the same npm is asked, and no PATH is needed. */
function npmCommand() {
  const script = process.env.npm_execpath;
  if (script?.endsWith('.js')) return { file: process.execPath, before: [script], shell: false };
  return {
    file: process.platform === 'win32' ? 'npm.cmd' : 'npm',
    before: [],
    shell: process.platform === 'win32',
  };
}

/** Installs the packages of the lock file when they are not there. Returns a problem's text, or nothing. */
export function ensurePackages(home) {
  const lock = readJson(join(home, 'package-lock.json'));
  const installed = readJson(join(home, 'node_modules', '.package-lock.json'));
  if (packagesMatch(lock, installed)) return undefined;
  process.stderr.write('Installing the packages of package-lock.json (first run only) ...\n');
  const npm = npmCommand();
  const flags = ['ci', '--include=dev', '--no-audit', '--no-fund', '--loglevel=error'];
  const done = spawnSync(npm.file, [...npm.before, ...flags], {
    cwd: home,
    shell: npm.shell,
    stdio: ['ignore', 'ignore', 'inherit'],
  });
  if (done.status === 0) return undefined;
  return `The packages could not be installed: "npm ci" ended with ${done.error?.message ?? `code ${done.status}`}. Run "npm ci" to see why.`;
}
