import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import type { Step } from './Step.ts';

interface Chips {
  readonly ms: number;
  readonly peakMb: number;
  readonly planKb: number;
}

/** A floor of chips laid in a process of its own, so that its memory is nobody else's. */
function layOnce(home: string): Chips {
  const script = join(home, 'src', 'site', 'bench', 'chipsFresh.ts');
  const done = spawnSync(process.execPath, ['--import', 'tsx', script, home], {
    cwd: home,
    encoding: 'utf8',
  });
  if (done.status !== 0) throw new Error(done.stderr);
  return JSON.parse(done.stdout);
}

/** 20,000 loose chips, hexagons of 1 in: how long they take, how much memory, and how large their plan is. */
export function chipSteps(home: string): readonly Step[] {
  const runs: Chips[] = [];
  const of = (figure: keyof Chips) => async () => {
    while (runs.length < 3) runs.push(layOnce(home));
    return runs.map((run) => run[figure]);
  };
  return [
    { name: 'calculate 20,000 chips, hexagons of 1 in', unit: 'ms', target: 3000, measure: of('ms') },
    { name: "memory at its peak with their plan's drawing", unit: 'MB', target: 800, measure: of('peakMb') },
    { name: "the drawing of the chips' plan", unit: 'kB', target: 2000, measure: of('planKb') },
  ];
}
