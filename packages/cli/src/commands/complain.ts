import type { Report } from '@foregone/engine';
import { EXIT } from '../exit-codes.ts';
import { readTextFile, type ReadFile, type Unreadable } from '../files.ts';
import type { Terminal } from '../terminal.ts';
import { drawDiagnostic } from '../render/diagnostics.ts';

/** Says why a file could not be read. */
export function complain({ path, words }: Unreadable, terminal: Terminal): void {
  terminal.err(`${path} ${words}.\n`);
}

export function codeOf({ isText }: Unreadable): number {
  return isText ? EXIT.usage : EXIT.notUnderstood;
}

/** The file, or the exit code after saying what is wrong with it. */
export async function fileOrCode(path: string, terminal: Terminal): Promise<ReadFile | number> {
  const file = await readTextFile(path);
  if (file.ok) return file.value;
  complain(file.error, terminal);
  return codeOf(file.error);
}

/** Says what keeps a note from being understood. */
export function complainOfNote(path: string, text: string, report: Report, terminal: Terminal): void {
  const errors = report.diagnostics.filter(({ severity }) => severity === 'error');
  for (const one of errors) terminal.err(`${drawDiagnostic(path, text, one, terminal)}\n\n`);
  terminal.err(`${report.summary}\n`);
}
