import { spawnSync } from 'node:child_process';
import { closeSync, mkdirSync, openSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';

/**
 * A log is a Markdown file: a fenced block that names a file after its language makes that file, a block of `console` holds
 * commands after `$`, each followed by everything it printed and, where it is not 0, its exit code in brackets.
 */
const BLOCK = /^```(\w+)(?: (\S+))?\n([\s\S]*?)^```$/gm;

/** The same log as it comes out now. */
export function rerun(log: string, program: string, folder: string): string {
  return log.replaceAll(BLOCK, (whole, language: string, file: string | undefined, body: string) => {
    if (file !== undefined) {
      mkdirSync(dirname(join(folder, file)), { recursive: true });
      writeFileSync(join(folder, file), body);
      return whole;
    }
    if (language !== 'console') return whole;
    const commands = body.split('\n').filter((line) => line.startsWith('$ '));
    const told = commands.map((line) => `${line}\n${outputOf(line.slice(2), program, folder)}`);
    return `\`\`\`console\n${told.join('\n')}\`\`\``;
  });
}

function outputOf(command: string, program: string, folder: string): string {
  const [line, input] = command.split(' < ');
  const words = [...line.matchAll(/'([^']*)'|(\S+)/g)].map((match) => match[1] ?? match[2]);
  const [name, ...parameters] = words;
  if (name !== 'foregone') throw new Error(`a log only knows foregone, not ${name}`);
  const at = join(folder, '~output');
  const to = openSync(at, 'w');
  const from = input === undefined ? 'ignore' : openSync(join(folder, input), 'r');
  const { status } = spawnSync(process.execPath, [program, ...parameters], {
    cwd: folder,
    env: { PATH: process.env.PATH },
    stdio: [from, to, to],
  });
  closeSync(to);
  if (typeof from === 'number') closeSync(from);
  const output = masked(readFileSync(at, 'utf8'));
  return status === 0 ? output : `${output}[${status}]\n`;
}

/** Times differ from run to run. */
function masked(output: string): string {
  return output.replaceAll(/\d+\.\d\d s$/gm, '0.00 s').replaceAll(/"seconds": [\d.]+/g, '"seconds": 0');
}
