import { tsImport } from 'tsx/esm/api';

/**
 * Lets Eleventy use TypeScript. The default export of `entry` gives `{globals, data}`; it is loaded anew before
 * every build, because an ordinary import would keep the code of the first build after an edit. A listener to the
 * event "parts" may hand the parts over instead (`request.parts`), when it has made them already.
 */
export default async function typescriptPlugin(config, { entry, globals, data }) {
  let parts;
  config.on('eleventy.before', async () => {
    const request = {};
    await config.emit('parts', request);
    try {
      parts = request.parts ?? (await (await tsImport(entry, import.meta.url)).default());
    } catch (error) {
      // While serving, an unfinished edit must not end the server: the last good state stays.
      if (!parts) throw error;
      process.stderr.write(`${error.stack}\n`);
    }
  });
  // Given to the engine itself: Eleventy would time every call of a global that is added through it.
  config.on('eleventy.engine.njk', ({ environment }) => {
    for (const name of globals) {
      environment.addGlobal(name, function (...args) {
        return parts.globals[name].apply(this, args);
      });
    }
  });
  for (const name of data) config.addGlobalData(name, () => parts.data[name]);
}
