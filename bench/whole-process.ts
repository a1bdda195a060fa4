import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

export interface ProcessFigures {
  /** Milliseconds of processor time, all threads, and on the clock: the best of some runs. */
  readonly cpu: number;
  readonly clock: number;
  /** Peak resident memory in megabytes, the worst of them. */
  readonly peak: number;
}

const RUNS = 5;

/** `foregone prove NOTE`, the built command line, from start to end. */
export function proveProcess(bench: string, program: string, text: string): ProcessFigures {
  const folder = mkdtempSync(join(tmpdir(), 'foregone-bench-'));
  try {
    const note = join(folder, 'note.md');
    writeFileSync(note, text);
    const all = Array.from({ length: RUNS }, () => {
      const started = performance.now();
      const done = spawnSync(
        process.execPath,
        ['--import', join(bench, 'report-peak.mjs'), program, 'prove', note],
        { encoding: 'utf8' },
      );
      const clock = performance.now() - started;
      const told = /peak (\d+) cpu (\d+)/.exec(done.stderr);
      if (told === null) throw new Error(`the command line said: ${done.stdout}${done.stderr}`);
      return { clock, peak: (Number(told[1]) * 1024) / 1e6, cpu: Number(told[2]) };
    });
    const least = (of: (one: ProcessFigures) => number): number => Math.min(...all.map(of));
    return {
      cpu: least(({ cpu }) => cpu),
      clock: least(({ clock }) => clock),
      peak: Math.max(...all.map(({ peak }) => peak)),
    };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
