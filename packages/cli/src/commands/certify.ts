import { exitOf } from '../exit-codes.ts';
import type { JobLimits } from '../job-limits.ts';
import { runJob } from '../run-job.ts';
import type { Terminal } from '../terminal.ts';
import { complainOfNote, fileOrCode } from './complain.ts';
import { writeCertificate } from './prove.ts';

/** Proves a note and writes its certificate: to `output`, else to standard output. */
export async function certify(
  path: string,
  { output, limits }: { readonly output: string; readonly limits: JobLimits },
  terminal: Terminal,
): Promise<number> {
  const file = await fileOrCode(path, terminal);
  if (typeof file === 'number') return file;
  const { report, certificate } = await runJob({ job: 'check', text: file.text, limits, certify: true });
  if (report.verdict === 'not understood') complainOfNote(path, file.text, report, terminal);
  const failed = writeCertificate(output, certificate, terminal);
  if (failed === undefined && certificate?.ok === true && output !== '-')
    terminal.out(`${output} written: ${report.summary}\n`);
  return failed ?? exitOf(report.verdict);
}
