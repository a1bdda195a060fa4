import { REPORT_VERDICTS, sayTrouble, type ReportVerdict } from '@foregone/engine';
import { EXIT, exitOf } from '../exit-codes.ts';
import { readTextFile, writeTextFile, type ReadFile } from '../files.ts';
import type { JobLimits } from '../job-limits.ts';
import type { Answers } from '../jobs.ts';
import { jsonText, reportJson } from '../json.ts';
import { runJob } from '../run-job.ts';
import type { Terminal } from '../terminal.ts';
import { drawReport, paintVerdict } from '../render/report.ts';
import { complain } from './complain.ts';

export interface ProveOptions {
  readonly json: boolean;
  readonly certificate: string | undefined;
  readonly limits: JobLimits;
}

/** Every note with its verdict; the exit code is the worst of them. */
export async function prove(
  paths: readonly string[],
  options: ProveOptions,
  terminal: Terminal,
): Promise<number> {
  const { json, certificate } = options;
  if (certificate !== undefined && paths.length > 1) {
    terminal.err('A certificate is for one note: give one file with --certificate.\n');
    return EXIT.usage;
  }
  const verdicts: ReportVerdict[] = [];
  const results: Record<string, unknown>[] = [];
  let trouble: number | undefined;
  for (const path of paths) {
    const file = await readTextFile(path);
    if (!file.ok) {
      const { words, isText } = file.error;
      if (json)
        results.push({ file: path, verdict: isText ? null : 'not understood', problem: `${path} ${words}` });
      complain(file.error, terminal);
      if (isText) trouble ??= EXIT.usage;
      else verdicts.push('not understood');
      continue;
    }
    const { report, advice, seconds, code } = await proveOne(file.value, options, terminal);
    trouble ??= code;
    verdicts.push(report.verdict);
    if (json) results.push(reportJson(path, report, seconds, advice));
    else {
      if (results.length > 0) terminal.out('\n');
      results.push({});
      terminal.out(drawReport(path, file.value.text, report, seconds, terminal, advice));
    }
  }
  const verdict = worstOf(verdicts);
  if (json)
    terminal.out(jsonText(paths.length === 1 ? results[0] : { verdict: verdict ?? null, files: results }));
  else if (paths.length > 1 && verdict !== undefined)
    terminal.out(`\n${paths.length} notes, the worst ${paintVerdict(verdict, terminal)}\n`);
  return trouble ?? (verdict === undefined ? EXIT.usage : exitOf(verdict));
}

async function proveOne({ text }: ReadFile, { certificate, limits }: ProveOptions, terminal: Terminal) {
  const started = performance.now();
  const answer = await runJob({
    job: 'check',
    text,
    limits,
    certify: certificate !== undefined,
    advise: true,
  });
  const seconds = (performance.now() - started) / 1000;
  const code =
    certificate === undefined ? undefined : writeCertificate(certificate, answer.certificate, terminal);
  return { report: answer.report, advice: answer.advice, seconds, code };
}

type Made = Answers['check']['certificate'];

/** Undefined when all went well or there is nothing to certify, which the verdict says already. */
export function writeCertificate(path: string, made: Made, terminal: Terminal): number | undefined {
  if (made === null) return undefined;
  if (!made.ok) {
    terminal.err(`No certificate was written. ${sayTrouble(made.error)}\n`);
    return undefined;
  }
  const text = `${JSON.stringify(made.value)}\n`;
  if (path === '-') {
    terminal.out(text);
    return undefined;
  }
  const problem = writeTextFile(path, text);
  if (problem === undefined) return undefined;
  terminal.err(`${problem}.\n`);
  return EXIT.usage;
}

/** In the order refuted, not understood, undecided, empty, proved. */
export function worstOf(verdicts: readonly ReportVerdict[]): ReportVerdict | undefined {
  return REPORT_VERDICTS.find((verdict) => verdicts.includes(verdict));
}
