import { counted, sayTrouble, type SlipRow } from '@foregone/engine';
import { exitOf } from '../exit-codes.ts';
import type { JobLimits } from '../job-limits.ts';
import { jsonText, performanceJson } from '../json.ts';
import { runJob } from '../run-job.ts';
import { shown } from '../render/diagnostics.ts';
import { drawBlame } from '../render/blame.ts';
import { drawPerformance } from '../render/performance.ts';
import { drawRemains } from '../render/remains.ts';
import { hang, wrap } from '../render/wrap.ts';
import type { Terminal } from '../terminal.ts';
import { complainOfNote, fileOrCode } from './complain.ts';

export interface SlipsOptions {
  readonly json: boolean;
  /** The step that is asked about; all steps where it is undefined. */
  readonly at: string | undefined;
  readonly limits: JobLimits;
}

/** The usual slips in every step, or everything about those in one step. */
export async function slips(path: string, options: SlipsOptions, terminal: Terminal): Promise<number> {
  const file = await fileOrCode(path, terminal);
  if (typeof file === 'number') return file;
  const { json, at, limits } = options;
  const { report, problem, rows, blamed } = await runJob({
    job: 'slips',
    text: file.text,
    limits,
    at: at ?? null,
  });
  if (report.verdict === 'not understood') complainOfNote(path, file.text, report, terminal);
  else if (problem !== null) terminal.err(`${sayTrouble(problem)}\n`);
  const { title, verdict } = report;
  if (json) {
    const leftOut = report.sentences.filter((one) => one.verdict !== 'proved').map(({ text }) => text);
    terminal.out(
      jsonText({
        file: path,
        title,
        verdict,
        ...(problem === null ? {} : { problem: sayTrouble(problem) }),
        leftOut,
        blame: blamed,
        slips: rows.map(rowJson),
      }),
    );
    return exitOf(verdict);
  }
  if (rows.length === 0 && blamed.length === 0 && problem === null && report.verdict !== 'not understood')
    terminal.out(
      at === undefined ? 'No step can go wrong in a usual way.\n' : `No slip at step ${shown(at)}.\n`,
    );
  for (const one of blamed) terminal.out(`${drawBlame(one, terminal)}\n`);
  const whole = at !== undefined;
  let step = '';
  rows.forEach((row, i) => {
    if (row.step !== step) {
      terminal.out(`${i > 0 ? '\n' : ''}${drawStep(row, terminal)}\n`);
      ({ step } = row);
    }
    terminal.out(`${drawRow(row, whole, terminal)}\n`);
  });
  if (!whole && rows.some(({ failure }) => failure !== null))
    terminal.out(
      `\n${terminal.colours.dim(wrap('With --at and the number of a step: what remains certain, how likely it is, and a performance that fails.', terminal.width))}\n`,
    );
  return exitOf(verdict);
}

function rowJson({ failure, ...row }: SlipRow): Record<string, unknown> {
  if (failure === null) return { ...row, failure };
  const { performance, ...rest } = failure;
  return { ...row, failure: { ...performanceJson(performance), ...rest } };
}

function drawStep({ step, sentence }: SlipRow, { colours, width }: Terminal): string {
  return colours.bold(hang(`${step.padEnd(3)}  `, shown(sentence), width));
}

const SIGN = {
  harmless: 'harmless',
  sometimes: 'sometimes',
  fatal: 'fatal',
  harmful: 'harmful',
  undecided: '?',
} as const;

function drawRow(row: SlipRow, whole: boolean, terminal: Terminal): string {
  const { colours, width } = terminal;
  const { verdict, title, notice, ways, chance } = row;
  const paint = verdict === 'harmless' ? colours.green : verdict === 'fatal' ? colours.red : colours.yellow;
  const sign = SIGN[verdict].padEnd(9);
  const many = ways > 1 ? ` (${counted(ways, 'way')})` : '';
  const head = `     ${paint(sign)}  ${title}${many}`;
  if (verdict === 'harmless' && !whole) return head;
  const lines = [head];
  if (whole) lines.push(hang(INDENT, row.help, width));
  if (verdict !== 'harmless' && (whole || verdict !== 'fatal')) lines.push(hang(INDENT, row.words, width));
  if (chance !== null) lines.push(hang(INDENT, `Chance that it comes out: ${chance}.`, width));
  const told = sayNotice(notice);
  if (told !== '') lines.push(hang(INDENT, told, width));
  if (row.remains.length > 0)
    lines.push(...drawRemains(row.remains, 'Still certain: ', INDENT, whole, terminal));
  if (whole && row.failure !== null) {
    const { performance, stuck, shows, lost } = row.failure;
    lines.push(
      '',
      drawPerformance(performance, { ...terminal, width: width - INDENT.length }).replace(/^(?=.)/gm, INDENT),
    );
    for (const line of [stuck, shows === '' ? '' : `${shows}.`, lost.words])
      if (line !== '') lines.push(hang(INDENT, shown(line), width));
    lines.push('');
  }
  return lines.join('\n');
}

const INDENT = ' '.repeat(16);

function sayNotice({ verdict, words }: SlipRow['notice']): string {
  switch (verdict) {
    case 'always':
      return `Shows: ${words}.`;
    case 'sometimes':
      return `May show: ${words}.`;
    case 'never':
      return 'Nothing shows.';
    case 'unknown':
      return '';
  }
}
