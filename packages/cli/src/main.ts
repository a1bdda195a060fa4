import { EXIT } from './exit-codes.ts';
import { program } from './program.ts';
import { servedAsWorker } from './run-job.ts';
import { leaveQuietlyOnBrokenPipe, openTerminal } from './terminal.ts';

/** Does what the arguments of this process ask for and sets its exit code. */
export async function run(): Promise<void> {
  if (servedAsWorker()) return;
  try {
    process.exitCode = await answered();
  } catch (error) {
    const stack = error instanceof Error ? (error.stack ?? error.message) : String(error);
    process.stderr.write(
      `This is a fault of Foregone, not of the note. Please report it with the note and these lines:\n\n${stack}\n`,
    );
    process.exitCode = EXIT.fault;
  }
}

/** Proves notes and says nothing, so that what proving needs has been compiled. */
export async function warm(notes: readonly string[]): Promise<void> {
  await program(['prove', ...notes], { ...openTerminal(), out: () => {}, err: () => {} });
}

async function answered(): Promise<number> {
  leaveQuietlyOnBrokenPipe();
  process.on('SIGINT', () => {
    // A cursor that progress has hidden must come back.
    if (process.stderr.isTTY === true) process.stderr.write('\u001b[?25h\n');
    process.stderr.write('Stopped.\n');
    process.exit(EXIT.interrupted);
  });
  return program(process.argv.slice(2), openTerminal());
}
