import { sayTrouble } from '@foregone/engine';
import { EXIT } from '../exit-codes.ts';
import { writeTextFile } from '../files.ts';
import type { ExportJobOptions } from '../jobs.ts';
import { runJob } from '../run-job.ts';
import { shown } from '../render/diagnostics.ts';
import type { Terminal } from '../terminal.ts';
import { complainOfNote, fileOrCode } from './complain.ts';

/** Writes a sentence of the ending as a question in SMT-LIB 2: to `output`, else to standard output. */
export async function exportFor(
  path: string,
  { output, ...options }: ExportJobOptions & { readonly output: string },
  terminal: Terminal,
): Promise<number> {
  const file = await fileOrCode(path, terminal);
  if (typeof file === 'number') return file;
  const { report, sentences, smt } = await runJob({ job: 'export', text: file.text, options });
  if (report !== null) {
    complainOfNote(path, file.text, report, terminal);
    return EXIT.notUnderstood;
  }
  if (smt === null) {
    if (sentences.length === 0) {
      terminal.err('The note has no sentence to ask about.\n');
      return EXIT.empty;
    }
    terminal.err(`Say which sentence of the ending is meant:\n`);
    sentences.forEach((text, i) => terminal.err(`  --sentence ${i + 1}  ${shown(text)}\n`));
    return EXIT.usage;
  }
  if (!smt.ok) {
    terminal.err(`${sayTrouble(smt.error)}\n`);
    return EXIT.undecided;
  }
  if (output === '-') {
    terminal.out(smt.value);
    return EXIT.proved;
  }
  const problem = writeTextFile(output, smt.value);
  if (problem !== undefined) {
    terminal.err(`${problem}.\n`);
    return EXIT.usage;
  }
  terminal.out(`${output} written.\n`);
  return EXIT.proved;
}
