import {
  counted,
  grouped,
  sayTrouble,
  type AlterationData,
  type FailureData,
  type FreedomRowData,
} from '@foregone/engine';
import { EXIT, exitOf } from '../exit-codes.ts';
import type { JobLimits } from '../job-limits.ts';
import type { Answers } from '../jobs.ts';
import { jsonText } from '../json.ts';
import { runJob } from '../run-job.ts';
import { shown } from '../render/diagnostics.ts';
import { drawPerformance } from '../render/performance.ts';
import { hang, wrap } from '../render/wrap.ts';
import type { Terminal } from '../terminal.ts';
import { complainOfNote, fileOrCode } from './complain.ts';

export interface FreedomOptions {
  readonly json: boolean;
  /** Unsafe rows too. */
  readonly all: boolean;
  /** The place that is asked about; all places where it is undefined. */
  readonly at: string | undefined;
  /** A row whose shortest failing performance is asked for. */
  readonly failing: string | undefined;
  /** How many moves one after the other. */
  readonly moves: number;
  readonly limits: JobLimits;
}

type Place = Answers['freedom']['places'][number];

/** What else could be done at a place, or at every place, and how its step could be changed. */
export async function freedom(path: string, options: FreedomOptions, terminal: Terminal): Promise<number> {
  const file = await fileOrCode(path, terminal);
  if (typeof file === 'number') return file;
  const { json, all, at, failing, moves, limits } = options;
  if (failing !== undefined && at === undefined) {
    terminal.err('Say with --at where it would be put in.\n');
    return EXIT.usage;
  }
  if (moves !== 1 && moves !== 2 && moves !== 3) {
    terminal.err('One move, two or three.\n');
    return EXIT.usage;
  }
  const job = {
    job: 'freedom',
    text: file.text,
    limits,
    at: at ?? null,
    failing: failing ?? null,
    moves,
  } as const;
  const { report, problem, names, places } = await runJob(job);
  if (report.verdict === 'not understood') complainOfNote(path, file.text, report, terminal);
  else if (problem !== null) terminal.err(`${sayTrouble(problem)}\n`);
  else if (places.length === 0) {
    terminal.err(wrap(`No place ${shown(at ?? '')}. There are: ${names.join('; ')}.`, terminal.width) + '\n');
    return EXIT.usage;
  }
  if (json) {
    const { title, verdict } = report;
    terminal.out(
      jsonText({
        file: path,
        title,
        verdict,
        ...(problem === null ? {} : { problem: sayTrouble(problem) }),
        places: places.map(placeJson),
      }),
    );
    return exitOf(report.verdict);
  }
  if (failing !== undefined) {
    const [place] = places;
    if (place === undefined) return exitOf(report.verdict);
    return drawFailing(place, failing, terminal);
  }
  terminal.out(places.map((place) => drawPlace(place, all, terminal)).join('\n'));
  return exitOf(report.verdict);
}

function placeJson({ report, alterations, sequences, failure }: Place): Record<string, unknown> {
  const { place, ended, ...rest } = report;
  return {
    ...place,
    ...rest,
    alterations,
    ...(sequences === undefined ? {} : { sequences }),
    ...(failure === undefined ? {} : { failure: failure && failureJson(failure) }),
    ...(ended === null ? {} : { ended: sayTrouble(ended) }),
  };
}

function drawFailing({ failure, report: { place } }: Place, text: string, terminal: Terminal): number {
  if (failure === undefined || failure === null) {
    terminal.out(
      wrap(`No failing performance is known with "${shown(text)}" ${place.words}.`, terminal.width) + '\n',
    );
    return EXIT.proved;
  }
  terminal.out(`${drawPerformance(failure.performance, terminal)}\n`);
  for (const line of [failure.stuck, failure.shows])
    if (line !== '') terminal.out(`${hang('', shown(line), terminal.width)}\n`);
  return EXIT.refuted;
}

function drawPlace(
  { report, alterations, sequences = [] }: Place,
  isWhole: boolean,
  terminal: Terminal,
): string {
  const { colours, width } = terminal;
  const { place, rows, ended } = report;
  const what = place.sentence === '' ? '' : `: ${shown(place.sentence)}`;
  const lines = [colours.bold(hang('', `${capital(place.words)}${what}`, width))];
  if (place.reach !== 'reached')
    lines.push(
      place.reach === 'never reached'
        ? '  No performance comes here.'
        : '  Cards were looked at before: what else is safe here is not worked out.',
    );
  const groups = new Map<string, FreedomRowData[]>();
  for (const row of rows)
    if (isWhole || row.status !== 'unsafe') {
      const known = groups.get(row.hands);
      if (known === undefined) groups.set(row.hands, [row]);
      else known.push(row);
    }
  for (const [hands, some] of groups) {
    lines.push(colours.dim(`  ${hands}`));
    for (const row of some) lines.push(drawRow(row, terminal));
  }
  const unsafe = rows.filter(({ status }) => status === 'unsafe').length;
  if (unsafe > 0 && !isWhole)
    lines.push(colours.dim(`  ${grouped(unsafe)} more would not be safe: --all shows them`));
  if (ended !== null) lines.push(hang('  ', sayTrouble(ended), width));
  if (alterations.length > 0) {
    lines.push(colours.dim('  this step'));
    for (const one of alterations) lines.push(drawAlteration(one, terminal));
  }
  if (sequences.length > 0) {
    lines.push(colours.dim('  safe only one after the other'));
    const told = isWhole ? sequences : sequences.slice(0, MOST_SEQUENCES);
    for (const row of told) lines.push(drawRow(row, terminal));
    const left = sequences.length - told.length;
    if (left > 0) lines.push(colours.dim(`  ${counted(left, 'sequence')} more: --all shows them`));
  }
  return `${lines.join('\n')}\n`;
}

const MOST_SEQUENCES = 20;
const SIGN = { safe: 'safe', some: 'some', unsafe: 'not', undecided: '?' } as const;

function drawRow({ status, text, words }: FreedomRowData, { colours, width }: Terminal): string {
  const sign = SIGN[status].padEnd(4);
  const paint = { safe: colours.green, some: colours.yellow, unsafe: colours.red, undecided: colours.yellow };
  const said = words === '' ? text : `${text} ${status === 'some' ? `Safe: ${words}.` : words}`;
  const drawn = hang(`    ${sign}  `, shown(said), width);
  return drawn.replace(sign, paint[status](sign));
}

function drawAlteration({ kind, text, verdict }: AlterationData, { colours, width }: Terminal): string {
  const isSafe = verdict === 'proved';
  const sign = (isSafe ? 'safe' : verdict === 'refuted' ? 'not' : '?').padEnd(4);
  const what = { drop: 'left out', repeat: text, 'hand over': text, widen: text }[kind];
  const drawn = hang(`    ${sign}  `, shown(what), width);
  return drawn.replace(
    sign,
    (isSafe ? colours.green : verdict === 'refuted' ? colours.red : colours.yellow)(sign),
  );
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

function failureJson(failure: FailureData): unknown {
  return failure;
}
