import { isatty } from 'node:tty';
import pc from 'picocolors';

/** Where a command writes. */
export interface Terminal {
  readonly colours: Colours;
  /** Width for wrapping, in characters. */
  readonly width: number;
  /** True when a person is there to answer. */
  readonly interactive: boolean;
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
}

export type Colours = ReturnType<typeof pc.createColors>;

/** Colours only on a terminal that wants them: NO_COLOR, FORCE_COLOR and a dumb TERM are respected. */
function coloursWanted(): boolean {
  const { NO_COLOR, FORCE_COLOR, TERM } = process.env;
  if (NO_COLOR !== undefined && NO_COLOR !== '') return false;
  if (FORCE_COLOR !== undefined) return FORCE_COLOR !== '' && FORCE_COLOR !== '0';
  return process.stdout.isTTY === true && TERM !== 'dumb';
}

export function openTerminal(): Terminal {
  const columns = process.stdout.isTTY === true ? process.stdout.columns : 100;
  return {
    colours: pc.createColors(coloursWanted()),
    width: Math.max(40, Math.min(columns || 80, 110)),
    interactive: isatty(0) && process.stdout.isTTY === true,
    out: (text) => void process.stdout.write(text),
    err: (text) => void process.stderr.write(text),
  };
}

/** Nobody reads on: that is no fault, so it ends quietly with whatever code was already known. */
export function leaveQuietlyOnBrokenPipe(): void {
  for (const stream of [process.stdout, process.stderr])
    stream.on('error', (error: NodeJS.ErrnoException) => {
      if (error.code !== 'EPIPE') throw error;
      process.exit(process.exitCode ?? 0);
    });
}
