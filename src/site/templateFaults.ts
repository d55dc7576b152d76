import { readdirSync } from 'node:fs';

/** The part of a Nunjucks environment that compiles a template by its name. */
export interface TemplateLoader {
  getTemplate(name: string, compileNow: boolean): unknown;
}

/**
 * Compiles every included template and gives a line for each that does not compile. Nunjucks itself loses such an
 * error when the include stands inside an `if` or a `for`, and the page would silently lack a part.
 */
export function templateFaults(environment: TemplateLoader, folder: string): readonly string[] {
  const names = readdirSync(folder, { recursive: true }).map((name) => String(name).replaceAll('\\', '/'));
  return names
    .filter((name) => name.endsWith('.njk'))
    .flatMap((name) => {
      try {
        environment.getTemplate(name, true);
        return [];
      } catch (error) {
        return [`${folder}/${name}: ${(error as Error).message}`];
      }
    });
}
