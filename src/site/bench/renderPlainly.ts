import { Eleventy } from '@11ty/eleventy';
import type { Parts } from '../makeParts.ts';

interface PlainConfig {
  addGlobalData(name: string, data: unknown): void;
  on(event: string, listener: (engine: { environment: GlobalHolder }) => void): void;
}

interface GlobalHolder {
  addGlobal(name: string, run: unknown): void;
}

/** The same templates with ready data through Eleventy alone: none of our configuration, the pages written by Eleventy. */
export async function renderPlainly(parts: Parts, output: string): Promise<void> {
  const eleventy = new Eleventy('layouts', output, {
    configPath: false,
    quietMode: true,
    config: (config: PlainConfig) => {
      config.on('eleventy.engine.njk', ({ environment }) => {
        for (const [name, run] of Object.entries(parts.globals)) environment.addGlobal(name, run);
      });
      for (const [name, list] of Object.entries(parts.data)) config.addGlobalData(name, () => list);
    },
  });
  eleventy.disableLogger();
  await eleventy.write();
}
