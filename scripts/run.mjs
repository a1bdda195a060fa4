// Starts the project's own tools without a shell, so that it works the same on every system.
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { root } from './ensure.mjs';

/**
 * The file that runs an installed tool.
 *
 * @param {string} name the tool's package
 * @returns {string} a path to hand to Node
 */
export function tool(name) {
  const folder = join(root, 'node_modules', name);
  const { bin } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  const own = name === 'typescript' ? 'tsc' : name;
  return join(folder, typeof bin === 'string' ? bin : bin[own]);
}

/**
 * Runs a file with Node, from the root of the repository, and waits for it.
 *
 * @param {readonly string[]} command the file and its arguments
 * @param {{ cwd?: string, show?: boolean }} [options] where to run it, and whether its output goes straight to the terminal
 * @returns {{ code: number, output: string, seconds: number }} the exit code (70 when killed), everything it printed unless it
 *   was shown, and how long it took
 */
export function run(command, { cwd = root, show = false } = {}) {
  const started = process.hrtime.bigint();
  const done = spawnSync(process.execPath, command, {
    cwd,
    encoding: 'utf8',
    maxBuffer: Infinity,
    stdio: show ? ['ignore', 'inherit', 'inherit'] : ['ignore', 'pipe', 'pipe'],
  });
  const seconds = Number(process.hrtime.bigint() - started) / 1e9;
  const trouble = done.error === undefined ? '' : `${done.error.message}\n`;
  const signal = done.signal === null ? '' : `stopped by ${done.signal}\n`;
  return {
    code: done.status ?? 70,
    output: `${done.stdout ?? ''}${done.stderr ?? ''}${trouble}${signal}`,
    seconds,
  };
}

/** The command that builds the bundled command line, to be run in packages/cli. */
export const buildCli = {
  command: [join(root, 'node_modules/vite/bin/vite.js'), 'build'],
  cwd: join(root, 'packages/cli'),
};

/** The command that builds the workbench, to be run in packages/web. */
export const buildWeb = {
  command: [join(root, 'node_modules/vite/bin/vite.js'), 'build'],
  cwd: join(root, 'packages/web'),
};
