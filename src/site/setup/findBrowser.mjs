import { accessSync, constants, existsSync, readdirSync, statSync } from 'node:fs';
import { homedir } from 'node:os';
import { delimiter, join } from 'node:path';

const commands = [
  'chromium-headless-shell',
  'chrome-headless-shell',
  'chromium',
  'chromium-browser',
  'google-chrome',
  'google-chrome-stable',
  'chrome',
];

/** Places off the PATH where an installed Chromium or Chrome usually lies. */
function usualPlaces(env) {
  const mac = ['/Applications', join(homedir(), 'Applications')].flatMap((folder) => [
    join(folder, 'Google Chrome.app/Contents/MacOS/Google Chrome'),
    join(folder, 'Chromium.app/Contents/MacOS/Chromium'),
  ]);
  const windows = [env.PROGRAMFILES, env['PROGRAMFILES(X86)'], env.LOCALAPPDATA]
    .filter(Boolean)
    .map((folder) => join(folder, 'Google/Chrome/Application/chrome.exe'));
  const debian = ['/usr/bin/chromium-headless-shell', '/usr/bin/chromium', '/snap/bin/chromium'];
  return { darwin: mac, win32: windows, linux: debian }[process.platform] ?? [];
}

function isProgram(file) {
  try {
    accessSync(file, constants.X_OK);
    return statSync(file).isFile();
  } catch {
    return false;
  }
}

function onPath(env) {
  const folders = (env.PATH ?? '').split(delimiter).filter(Boolean);
  const ending = process.platform === 'win32' ? '.exe' : '';
  return commands.flatMap((name) => folders.map((folder) => join(folder, name + ending)));
}

/** The browser that Puppeteer has fetched into this folder, if any. */
export function fetchedBrowser(folder) {
  if (!existsSync(folder)) return undefined;
  const names = new Set(['chrome-headless-shell', 'chrome-headless-shell.exe']);
  const found = readdirSync(folder, { recursive: true, withFileTypes: true }).find(
    (entry) => entry.isFile() && names.has(entry.name),
  );
  return found && join(found.parentPath ?? found.path, found.name);
}

/**
 * A browser that is there already: the one named by PACKET_BROWSER, one on the PATH, one in a usual place,
 * one fetched before into `fetched` or Puppeteer's own store.
 */
export function findBrowser(env, fetched) {
  if (env.PACKET_BROWSER) return isProgram(env.PACKET_BROWSER) ? env.PACKET_BROWSER : undefined;
  const installed = [...onPath(env), ...usualPlaces(env)].find(isProgram);
  return installed ?? fetchedBrowser(fetched) ?? fetchedBrowser(join(homedir(), '.cache', 'puppeteer'));
}
