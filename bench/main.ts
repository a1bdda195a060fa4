import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { browserSuite } from './browser-suite.ts';
import { calibrationMs } from './calibrate.ts';
import { engineSuite } from './engine-suite.ts';
import { exactSuite } from './exact-suite.ts';
import { freedomSuite } from './freedom-suite.ts';
import { machine } from './machine.ts';
import { peerSuite } from './peer-suite.ts';
import { processSuite } from './process-suite.ts';
import { structuresSuite } from './structures-suite.ts';
import { drawn } from './tables.ts';
import { isMet, targetRow, type Target } from './targets.ts';

const SUITES = ['engine', 'exact', 'structures', 'freedom', 'process', 'peers', 'browser'] as const;

/** Runs the suites named, or all; ends with 1 when a target was missed. */
function main(): number {
  const { positionals, values } = parseArgs({
    allowPositionals: true,
    options: { root: { type: 'string' }, only: { type: 'string' } },
  });
  const root = values.root ?? process.cwd();
  const chosen = positionals.length === 0 ? [...SUITES] : positionals;
  const unknown = chosen.filter((name) => !SUITES.some((suite) => suite === name));
  if (unknown.length > 0) {
    console.error(`There is no suite ${unknown.join(', ')}; there are ${SUITES.join(', ')}.`);
    return 64;
  }
  machine().forEach((line) => console.log(line));
  console.log(`elimination of 512 rows over GF(2), to compare machines: ${calibrationMs().toFixed(2)} ms`);
  const targets: Target[] = [];
  const suites: Record<(typeof SUITES)[number], () => readonly Target[]> = {
    engine: engineSuite,
    exact: exactSuite,
    structures: structuresSuite,
    freedom: freedomSuite,
    process: () => processSuite(join(root, 'bench'), join(root, 'packages/cli/bin/foregone.mjs')),
    peers: () => peerSuite(join(root, 'bench/z3-child.mjs'), values.only ?? ''),
    browser: () => browserSuite(root),
  };
  for (const name of SUITES) if (chosen.includes(name)) targets.push(...suites[name]());
  if (targets.length === 0) return 0;
  console.log(`\n${drawn(['target', '', 'found', ''], targets.map(targetRow))}`);
  return targets.every(isMet) ? 0 : 1;
}

process.exitCode = main();
