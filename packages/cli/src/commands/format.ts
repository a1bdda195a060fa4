import { format as formatted } from '@foregone/engine';
import { EXIT } from '../exit-codes.ts';
import { writeTextFile } from '../files.ts';
import type { Terminal } from '../terminal.ts';
import { fileOrCode } from './complain.ts';

/** The note with its sentences as they are printed: to standard output, back into the file, or only whether it would differ. */
export async function format(
  path: string,
  { check, write }: { readonly check: boolean; readonly write: boolean },
  terminal: Terminal,
): Promise<number> {
  const file = await fileOrCode(path, terminal);
  if (typeof file === 'number') return file;
  const text = formatted(file.text);
  if (check) {
    if (text === file.text) return EXIT.proved;
    terminal.out(`${path} would be written differently.\n`);
    return EXIT.refuted;
  }
  if (!write || path === '-') {
    terminal.out(text);
    return EXIT.proved;
  }
  if (text === file.text) return EXIT.proved;
  const problem = writeTextFile(path, text);
  if (problem === undefined) terminal.out(`${path} written.\n`);
  else terminal.err(`${problem}.\n`);
  return problem === undefined ? EXIT.proved : EXIT.usage;
}
