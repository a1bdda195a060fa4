import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

export interface Solved {
  readonly answer: 'true' | 'false' | 'not finished' | 'not installed';
  /** Processor time of the solver's whole process. */
  readonly ms: number;
}

/** Runs a program on a file and tells its processor time, by the shell's own account of its children. */
function timed(
  command: readonly string[],
  mostMs: number,
): { code: number | null; output: string; ms: number; late: boolean } {
  const quoted = command.map((word) => `'${word.replaceAll("'", "'\\''")}'`).join(' ');
  const done = spawnSync('sh', ['-c', `${quoted}; code=$?; times >&2; exit $code`], {
    encoding: 'utf8',
    timeout: mostMs,
    killSignal: 'SIGKILL',
    maxBuffer: 2 ** 28,
  });
  const children = (done.stderr ?? '').trimEnd().split('\n').pop() ?? '';
  const ms = [...children.matchAll(/(\d+)m([\d.]+)s/g)].reduce(
    (sum, [, m, s]) => sum + Number(m) * 60_000 + Number(s) * 1000,
    0,
  );
  return { code: done.status, output: done.stdout ?? '', ms, late: done.error !== undefined };
}

export function isInstalled(name: string): boolean {
  return spawnSync('sh', ['-c', `command -v ${name}`]).status === 0;
}

/** A SAT solver on clauses: 20 says unsatisfiable, so that the ending is true, 10 satisfiable. */
export function satisfy(solver: 'cadical' | 'minisat', text: string, mostSeconds: number): Solved {
  if (!isInstalled(solver)) return { answer: 'not installed', ms: NaN };
  const folder = mkdtempSync(join(tmpdir(), 'foregone-bench-'));
  try {
    const file = join(folder, 'question.cnf');
    writeFileSync(file, text);
    const command =
      solver === 'cadical'
        ? ['cadical', '-q', '-n', '-t', String(mostSeconds), file]
        : ['minisat', '-verb=0', `-cpu-lim=${mostSeconds}`, file];
    const { code, ms } = timed(command, mostSeconds * 4000);
    return { answer: code === 20 ? 'true' : code === 10 ? 'false' : 'not finished', ms };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Z3, in a process of its own since it cannot be interrupted: `child` reads the file named and prints its answer. */
export function askZ3(child: string, text: string, mostSeconds: number): Solved {
  const folder = mkdtempSync(join(tmpdir(), 'foregone-bench-'));
  try {
    const file = join(folder, 'question.smt2');
    writeFileSync(file, text);
    const { output, ms, late } = timed(
      ['timeout', '-s', 'KILL', String(mostSeconds), process.execPath, child, file],
      mostSeconds * 4000,
    );
    if (late) return { answer: 'not finished', ms: mostSeconds * 1000 };
    const said = output.trim();
    return { answer: said === 'unsat' ? 'true' : said === 'sat' ? 'false' : 'not finished', ms };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
