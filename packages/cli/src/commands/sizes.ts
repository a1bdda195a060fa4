import { sayTrouble, type SizeRow, type SizesReport } from '@foregone/engine';
import { EXIT } from '../exit-codes.ts';
import type { JobLimits } from '../job-limits.ts';
import { jsonText } from '../json.ts';
import { runJob } from '../run-job.ts';
import { paintVerdict } from '../render/report.ts';
import { hang, wrap } from '../render/wrap.ts';
import type { Terminal } from '../terminal.ts';
import { complainOfNote, fileOrCode } from './complain.ts';

export interface SizesOptions {
  readonly json: boolean;
  readonly keepNumbers: boolean;
  readonly least: number | undefined;
  readonly most: number | undefined;
  readonly limits: JobLimits;
}

/** A table of verdicts, one for each number of cards, and the pattern in words. */
export async function sizes(path: string, options: SizesOptions, terminal: Terminal): Promise<number> {
  const file = await fileOrCode(path, terminal);
  if (typeof file === 'number') return file;
  const { json, keepNumbers, least, most, limits } = options;
  const { report, sizes: found } = await runJob({
    job: 'sizes',
    text: file.text,
    limits,
    range: {
      ...(least === undefined ? {} : { least }),
      ...(most === undefined ? {} : { most }),
      ...(keepNumbers ? { numbers: 'kept' } : {}),
    },
  });
  if (report.verdict === 'not understood') {
    complainOfNote(path, file.text, report, terminal);
    return EXIT.notUnderstood;
  }
  const problem = found.ok ? undefined : sayTrouble(found.error);
  const { title } = report;
  if (json)
    terminal.out(
      jsonText({
        file: path,
        title,
        ...(problem === undefined ? {} : { problem }),
        ...(found.ok ? found.value : {}),
      }),
    );
  else if (found.ok) draw(found.value, terminal);
  if (problem !== undefined) terminal.err(`${problem}\n`);
  return found.ok && found.value.how === 'proved' ? EXIT.proved : EXIT.undecided;
}

function draw({ scaled, rows, words }: SizesReport, terminal: Terminal): void {
  const { out, colours, width } = terminal;
  for (const one of scaled) out(`${colours.dim(hang('', `Here ${one}.`, width))}\n`);
  if (scaled.length > 0) out('\n');
  for (const verdict of VERDICTS) {
    const cards = rows.filter((row) => row.verdict === verdict).map((row) => row.cards);
    if (cards.length === 0) continue;
    const lead = verdict.padEnd(LEAD);
    const painted =
      verdict === 'does not fit'
        ? colours.dim(lead)
        : paintVerdict(verdict, terminal) + ' '.repeat(LEAD - verdict.length);
    out(`${painted}${hang(' '.repeat(LEAD), inRuns(cards), width).slice(LEAD)}\n`);
  }
  out(`\n${wrap(words, width)}\n`);
}

const VERDICTS: readonly SizeRow['verdict'][] = ['proved', 'refuted', 'undecided', 'empty', 'does not fit'];
const LEAD = 14;

/** `2 4 6 8`, `9-52`. */
function inRuns(numbers: readonly number[]): string {
  const runs: { from: number; to: number }[] = [];
  for (const n of numbers) {
    const last = runs.at(-1);
    if (last !== undefined && last.to === n - 1) last.to = n;
    else runs.push({ from: n, to: n });
  }
  return runs.map(({ from, to }) => (from === to ? `${from}` : `${from}-${to}`)).join(' ');
}
