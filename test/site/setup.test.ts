import { spawnSync } from 'node:child_process';
import { chmodSync, mkdirSync, mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { findBrowser } from '../../src/site/setup/findBrowser.mjs';
import { nodeProblem } from '../../src/site/setup/nodeProblem.mjs';
import { packagesMatch } from '../../src/site/setup/packages.mjs';

const home = dirname(dirname(import.meta.dirname));

function runCommand(...args: string[]) {
  return spawnSync(process.execPath, [join(home, 'src/site/run.mjs'), ...args], { encoding: 'utf8' });
}

describe('the packages', () => {
  const lock = {
    packages: {
      '': {},
      'node_modules/a': { version: '1.0.0' },
      'node_modules/b': { version: '2.0.0', optional: true },
    },
  };

  test.each([
    ['are installed anew when there are none', undefined, false],
    ['are installed anew when one is missing', { packages: {} }, false],
    [
      'are installed anew when one has another version',
      { packages: { 'node_modules/a': { version: '1.0.1' } } },
      false,
    ],
    [
      'are left alone when all are there but optional ones',
      { packages: { 'node_modules/a': { version: '1.0.0' } } },
      true,
    ],
  ])('%s', (_, installed, matches) => {
    expect(packagesMatch(lock, installed)).toBe(matches);
  });
});

describe('the version of Node', () => {
  test.each([
    ['18.20.0', true],
    ['20.18.3', true],
    ['20.19.0', false],
    ['22.0.0', false],
  ])('%s is too old: %s', (version, old) => {
    expect(nodeProblem(version, join(home, 'package.json')) !== undefined).toBe(old);
  });
});

describe('the browser', () => {
  const folder = mkdtempSync(join(tmpdir(), 'packet-browser-'));
  const fetched = join(folder, 'chrome-headless-shell', 'linux-1', 'chrome-headless-shell');
  mkdirSync(dirname(fetched), { recursive: true });
  writeFileSync(fetched, '');
  chmodSync(fetched, 0o755);

  test('is the one that PACKET_BROWSER names', () => {
    expect(findBrowser({ PACKET_BROWSER: fetched, PATH: '/usr/bin' }, folder)).toBe(fetched);
  });

  test('is none when PACKET_BROWSER names nothing that runs, rather than another one', () => {
    expect(findBrowser({ PACKET_BROWSER: '/no/such/browser', PATH: '/usr/bin' }, folder)).toBeUndefined();
  });

  test('is one on the PATH before one that was fetched', () => {
    const own = join(folder, 'chromium');
    writeFileSync(own, '');
    chmodSync(own, 0o755);
    expect(findBrowser({ PATH: folder }, folder)).toBe(own);
  });
});

describe('the command line', () => {
  test.each(['build', 'test', 'dev', 'check', 'new', 'bench'])(
    '%s has help and does nothing else then',
    (command) => {
      const { status, stdout } = runCommand(command, '--help');
      expect(status).toBe(0);
      expect(stdout).toMatch(/^npm (start|test|run)/);
    },
  );

  test('refuses a command that it does not know, and shows those it does', () => {
    const { status, stderr } = runCommand('biuld');
    expect(status).toBe(1);
    expect(stderr).toContain('npm start');
  });

  test('refuses a job that is not there, and names those that are', () => {
    const { status, stderr } = runCommand('check', 'no-such-job');
    expect(status).toBe(1);
    expect(stderr).toContain('There is no job "no-such-job"');
  });

  test.each(['Boot Room', 'boot--room', '../up', 'assets', ''])('new refuses the name "%s"', (name) => {
    expect(runCommand('new', name).status).toBe(1);
  });
});
