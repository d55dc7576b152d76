/** What `--help` prints, a text a command. Kept apart from the commands, so that it shows before anything is installed. */
const texts = {
  build: `npm start [-- <job> ...]
Builds every job in jobs/, or the named ones, to output/: pages, PDFs and data. Then open output/index.html.
Exit code 0: all is built. 1: a job has problems, or there are no PDFs because no browser was found.`,
  test: `npm test [-- <part of a test's path> ...]
Runs every check: format and lint, types, tests. "npm run test:long" adds the long versions of the tests.`,
  dev: `npm run dev [-- --port=8080]
Serves the pages and builds them again when a job, a template, a style, a word or a source file is edited.`,
  check: `npm run check [-- <job> ...]
Reads the job files and reports their problems; writes nothing. Exit code 1 when there are any.`,
  new: `npm run new -- <job>
Writes jobs/<job>/job.yaml, a job file with comments to fill in. Never overwrites one.
<job> is a folder name: small letters, digits and single hyphens.`,
  bench: `npm run bench
Measures the parts of a build on this machine: each figure, the median of its runs, what it should stay under.`,
  goldens: `node src/site/run.mjs goldens
Takes the pictures of the demo sheets in test/sheets/golden anew, after a wanted change. Look at each before you keep it.`,
};

const settings = `
Set in the environment:
  PACKET_BROWSER=<path>   the Chromium or Chrome to print PDFs with
  PACKET_NO_APT=1         never install Debian's chromium-headless-shell`;

export const commandNames = Object.keys(texts);

/** The help of one command, or of all when the name is not one of them. */
export function helpOf(command) {
  const one = texts[command];
  const shown = one ? [one] : Object.values(texts);
  return `${shown.join('\n\n')}\n${settings}\n`;
}
