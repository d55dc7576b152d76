import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Step } from './Step.ts';

interface Fresh {
  readonly ms: number;
  readonly peakMb: number;
}

/** A small room, a middling one, and one whose packet is kept. */
const three = ['fernlea-boot-room', 'quarry-kitchen', 'almond-hall'];

/** One build by a process of its own into an empty folder: its start counts too, and its memory is nobody else's. */
function buildOnce(home: string, browser: string): Fresh {
  const folder = mkdtempSync(join(tmpdir(), 'packet-bench-'));
  for (const slug of three) cpSync(join(home, 'jobs', slug), join(folder, 'jobs', slug), { recursive: true });
  const script = join(home, 'src', 'site', 'bench', 'buildFresh.ts');
  const args = ['--import', 'tsx', script, home, folder, browser];
  const started = performance.now();
  const done = spawnSync(process.execPath, args, { cwd: home, encoding: 'utf8' });
  const ms = performance.now() - started;
  rmSync(folder, { recursive: true, force: true });
  if (done.status !== 0) throw new Error(done.stderr);
  return { ms, peakMb: Number(done.stdout) };
}

/** Pages and PDFs of three jobs from nothing: time and Node's memory, both of the same runs. */
export function buildSteps(home: string, browser: string): readonly Step[] {
  const runs: Fresh[] = [];
  const measured = async () => {
    while (runs.length < 3) runs.push(buildOnce(home, browser));
    return runs;
  };
  const what = 'pages and PDFs of three jobs, none built before';
  return [
    { name: what, unit: 'ms', target: 12_000, measure: async () => (await measured()).map(({ ms }) => ms) },
    {
      name: "Node's memory at its peak then",
      unit: 'MB',
      target: 500,
      measure: async () => (await measured()).map(({ peakMb }) => peakMb),
    },
  ];
}
