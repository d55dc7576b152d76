import { spawn, spawnSync } from 'node:child_process';
import { existsSync, readdirSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { fetchedBrowser, findBrowser } from './findBrowser.mjs';

const longestFetch = 300_000;
const longestPause = 20_000;

function bytesIn(folder) {
  if (!existsSync(folder)) return 0;
  return readdirSync(folder, { recursive: true }).reduce((sum, name) => {
    const found = statSync(join(folder, name), { throwIfNoEntry: false });
    return sum + (found?.size ?? 0);
  }, 0);
}

/** Puppeteer's own download, given up when nothing more arrives or it takes too long. */
function fetchBrowser(home, folder) {
  process.stderr.write('No browser found. Fetching one for the PDFs (first run only) ...\n');
  const script = join(home, 'node_modules', 'puppeteer', 'lib', 'cjs', 'puppeteer', 'node', 'cli.js');
  const args = [script, 'browsers', 'install', 'chrome-headless-shell', '--path', folder];
  return new Promise((resolve) => {
    const child = spawn(process.execPath, args, { cwd: home, stdio: 'ignore' });
    const started = Date.now();
    let size = 0;
    let grewAt = started;
    const watch = setInterval(() => {
      const now = bytesIn(folder);
      if (now > size) grewAt = Date.now();
      size = Math.max(size, now);
      if (Date.now() - grewAt > longestPause || Date.now() - started > longestFetch) child.kill();
    }, 1000);
    child.on('error', () => resolve(undefined));
    child.on('exit', (code) => {
      clearInterval(watch);
      if (code !== 0) rmSync(folder, { recursive: true, force: true });
      resolve(code === 0 ? fetchedBrowser(folder) : undefined);
    });
  });
}

function mayUseApt(env) {
  if (env.PACKET_NO_APT === '1' || process.platform !== 'linux' || process.getuid?.() !== 0) return false;
  return spawnSync('apt-get', ['--version'], { stdio: 'ignore' }).status === 0;
}

/** Debian's small package. Said aloud, because it changes the machine and not only this folder. */
function installDebianBrowser(env) {
  process.stderr.write(
    'Installing the Debian package chromium-headless-shell with apt-get (PACKET_NO_APT=1 forbids this) ...\n',
  );
  const options = { stdio: 'ignore', env: { ...env, DEBIAN_FRONTEND: 'noninteractive' }, timeout: 300_000 };
  const install = ['install', '-y', '--no-install-recommends', 'chromium-headless-shell'];
  if (spawnSync('apt-get', install, options).status !== 0) {
    spawnSync('apt-get', ['update'], options);
    spawnSync('apt-get', install, options);
  }
}

/** Path of a browser, found or fetched; nothing when none is to be had. */
export async function ensureBrowser(home, env) {
  const folder = join(home, '.cache', 'browser');
  const found = findBrowser(env, folder);
  if (found || env.PACKET_BROWSER) return found;
  const fetched = await fetchBrowser(home, folder);
  if (fetched || !mayUseApt(env)) return fetched;
  installDebianBrowser(env);
  return findBrowser(env, folder);
}
