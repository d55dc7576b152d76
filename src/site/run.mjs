/** Starts every command. Plain JavaScript without packages, because it is what installs them. */
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { ensureBrowser } from './setup/ensureBrowser.mjs';
import { commandNames, helpOf } from './setup/help.mjs';
import { nodeProblem } from './setup/nodeProblem.mjs';
import { ensurePackages } from './setup/packages.mjs';

const home = dirname(dirname(dirname(fileURLToPath(import.meta.url))));
process.chdir(home);
const printing = new Set(['build', 'test', 'bench', 'goldens']);

function fail(text) {
  process.stderr.write(`${text}\n`);
  return 1;
}

async function runCommand(command, args) {
  const missing = ensurePackages(home);
  if (missing) return fail(missing);
  const browser = printing.has(command) ? await ensureBrowser(home, process.env) : undefined;
  if (browser) process.env.PACKET_BROWSER = browser;
  const { register } = await import('tsx/esm/api');
  register();
  const { run } = await import(`./commands/${command}.ts`);
  return run({ home, browser, args });
}

async function main([command, ...args]) {
  if (!command || command === '--help' || !commandNames.includes(command)) {
    const asked = command === '--help';
    (asked ? process.stdout : process.stderr).write(helpOf(undefined));
    return asked ? 0 : 1;
  }
  if (args.includes('--help') || args.includes('-h')) {
    process.stdout.write(helpOf(command));
    return 0;
  }
  const oldNode = nodeProblem(process.versions.node, join(home, 'package.json'));
  return oldNode ? fail(oldNode) : runCommand(command, args);
}

process.exitCode = await main(process.argv.slice(2)).catch((error) => fail(error.stack ?? String(error)));
