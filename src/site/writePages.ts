import { join, relative } from 'node:path';
import { Eleventy } from '@11ty/eleventy';
import type { Parts } from './makeParts.ts';
import { type TemplateLoader, templateFaults } from './templateFaults.ts';
import { writeFile } from './writeFile.ts';

interface EleventyEvents {
  on<Told>(event: string, listener: (told: Told) => void): void;
}

/** Renders every page from the parts: path under the output → HTML. Eleventy runs in memory and writes nothing. */
export async function renderPages(parts: Parts): Promise<ReadonlyMap<string, string>> {
  const faults: string[] = [];
  const eleventy = new Eleventy('layouts', 'output', {
    configPath: '.eleventy.js',
    quietMode: true,
    config: (config: EleventyEvents) => {
      config.on('parts', (request: { parts?: Parts }) => {
        request.parts = parts;
      });
      config.on('eleventy.engine.njk', ({ environment }: { environment: TemplateLoader }) => {
        faults.push(...templateFaults(environment, 'layouts/_includes'));
      });
    },
  });
  eleventy.disableLogger();
  const pages = await eleventy.toJSON();
  if (faults.length > 0) throw new Error([...new Set(faults)].join('\n'));
  return new Map(
    pages
      .filter((page) => page.outputPath)
      .map((page) => [relative('output', String(page.outputPath)), page.content]),
  );
}

/** Writes rendered pages under a folder. */
export function writePages(pages: ReadonlyMap<string, string>, folder: string): void {
  for (const [path, html] of pages) writeFile(join(folder, path), html);
}
