import { readFileSync } from 'node:fs';

/** A sentence when this Node is older than package.json asks for, or nothing. */
export function nodeProblem(version, packageFile) {
  const wanted = JSON.parse(readFileSync(packageFile, 'utf8')).engines.node.replace('>=', '');
  const [major, minor] = version.split('.').map(Number);
  const [leastMajor, leastMinor] = wanted.split('.').map(Number);
  if (major > leastMajor || (major === leastMajor && minor >= leastMinor)) return undefined;
  return `This is Node ${version}; Node ${wanted} or newer is needed. Install a newer one, then run this again.`;
}
