import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { drawn } from './tables.ts';
import type { Target } from './targets.ts';

/** What the workbench is held to; README.md says how each is measured. */
const LIMITS: readonly (readonly [what: string, limit: number, unit: string])[] = [
  ['first chunk, gzipped', 250, 'kB'],
  ['typing in a note of 200 steps: script and style a key, p95', 16, 'ms'],
  ['margin after the last key, 16 cards, median', 100, 'ms'],
  ['margin after the last key, 52 cards, median', 400, 'ms'],
  ['52 cards moving: script and style a frame, p95', 8, 'ms'],
  ['shelf of 500 notes, until it is drawn, median', 200, 'ms'],
  ['finding a word among 500 notes, median', 50, 'ms'],
];

interface Figure {
  readonly what: string;
  readonly found: number;
}

/** The workbench, built, and measured in Chromium by the tests of its own package. */
export function browserSuite(root: string): Target[] {
  const web = join(root, 'packages/web');
  const folder = mkdtempSync(join(tmpdir(), 'foregone-figures-'));
  const file = join(folder, 'figures');
  try {
    run(web, [join(root, 'node_modules/vite/bin/vite.js'), 'build', '--logLevel', 'error']);
    const playwright = join(root, 'node_modules/@playwright/test/cli.js');
    run(web, [playwright, 'test', '--config', 'testing/measure'], { FOREGONE_FIGURES: file });
    const figures = readFileSync(file, 'utf8')
      .split('\n')
      .filter((line) => line !== '')
      .map((line) => figureIn(JSON.parse(line)));
    console.log(
      `\n${drawn(
        ['workbench', 'found'],
        figures.map(({ what, found }) => [what, found.toFixed(1)]),
      )}`,
    );
    return LIMITS.map(([what, limit, unit]) => ({
      what,
      limit,
      unit,
      // A figure that is not there is missed.
      found: figures.find((one) => one.what === what)?.found ?? Number.NaN,
    }));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function run(cwd: string, command: readonly string[], env: Readonly<Record<string, string>> = {}): void {
  const { status } = spawnSync(process.execPath, command, {
    cwd,
    env: { ...process.env, ...env },
    stdio: ['ignore', 'ignore', 'inherit'],
  });
  if (status !== 0) throw new Error('the workbench could not be measured');
}

function figureIn(value: unknown): Figure {
  if (typeof value === 'object' && value !== null && 'what' in value && 'found' in value) {
    const { what, found } = value;
    if (typeof what === 'string' && typeof found === 'number') return { what, found };
  }
  throw new Error('the measurements wrote something else');
}
