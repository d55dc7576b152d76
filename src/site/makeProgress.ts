/** Tells on stderr what is being done, but only once the work has gone on for a while: short work stays quiet. */
export function makeProgress(quietMs = 1500): (text: string) => void {
  const started = Date.now();
  return (text) => {
    if (Date.now() - started > quietMs) process.stderr.write(`${text} ...\n`);
  };
}
