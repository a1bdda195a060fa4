import {
  sayTrouble,
  type ChainLink,
  type NameData,
  type SameReport,
  type SwapsReport,
} from '@foregone/engine';
import { EXIT } from '../exit-codes.ts';
import type { JobLimits } from '../job-limits.ts';
import { jsonText } from '../json.ts';
import { runJob } from '../run-job.ts';
import { shown } from '../render/diagnostics.ts';
import { hang, wrap } from '../render/wrap.ts';
import type { Terminal } from '../terminal.ts';
import { complainOfNote, fileOrCode } from './complain.ts';

export interface SameOptions {
  readonly json: boolean;
  /** Cards at hand for other relations; undefined for a full pack. */
  readonly from: string | undefined;
  readonly limits: JobLimits;
}

/** Two routines and what they rest on; or one of them in every relation that the cards at hand offer. */
export async function same(
  path: string,
  otherPath: string | undefined,
  options: SameOptions,
  terminal: Terminal,
): Promise<number> {
  return otherPath === undefined
    ? swaps(path, options, terminal)
    : compared([path, otherPath], options, terminal);
}

async function compared(
  paths: readonly [string, string],
  { json, limits }: SameOptions,
  terminal: Terminal,
): Promise<number> {
  const files = [await fileOrCode(paths[0], terminal), await fileOrCode(paths[1], terminal)] as const;
  const [one, other] = files;
  if (typeof one === 'number') return one;
  if (typeof other === 'number') return other;
  const { reports, same: found } = await runJob({ job: 'same', texts: [one.text, other.text], limits });
  const wrong = reports.findIndex(({ verdict }) => verdict === 'not understood');
  if (wrong >= 0) {
    complainOfNote(paths[wrong], [one, other][wrong].text, reports[wrong], terminal);
    return EXIT.notUnderstood;
  }
  const problem = found.ok ? undefined : sayTrouble(found.error);
  const titles = reports.map(({ title }) => title);
  if (json)
    terminal.out(
      jsonText({
        files: paths,
        titles,
        ...(problem === undefined ? {} : { problem }),
        ...(found.ok ? found.value : {}),
      }),
    );
  else if (found.ok) drawSame(found.value, titles, terminal);
  if (problem !== undefined) terminal.err(`${problem}\n`);
  if (!found.ok || found.value.verdict === 'not told') return EXIT.undecided;
  return found.value.verdict.startsWith('the same') ? EXIT.proved : EXIT.refuted;
}

function drawSame(
  { verdict, chains, handling, words }: SameReport,
  titles: readonly string[],
  terminal: Terminal,
): void {
  const { out, colours, width } = terminal;
  out(`${colours.bold(verdict)}\n`);
  chains.forEach((chain, i) => {
    out(`\n${colours.bold(shown(titles[i]))}\n`);
    for (const link of chain) out(`${drawLink(link, width)}\n`);
    if (chain.length === 0) out('  no structure that has a name\n');
  });
  out(`\n${wrap(words, width)}\n`);
  if (handling !== '') out(`${wrap(handling, width)}\n`);
}

function drawLink({ number, names }: ChainLink, width: number): string {
  return hang(`  ${(number === '' ? 'end' : number).padEnd(8)}`, names.map(nameOf).join('; '), width);
}

function nameOf({ trade, name, relation }: NameData): string {
  return `${trade === '' ? '' : `${trade} `}${name}, in ${relation}`;
}

async function swaps(path: string, { json, from, limits }: SameOptions, terminal: Terminal): Promise<number> {
  const file = await fileOrCode(path, terminal);
  if (typeof file === 'number') return file;
  const { report, swaps: found } = await runJob({
    job: 'swaps',
    text: file.text,
    limits,
    hand: from ?? null,
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
  else if (found.ok) drawSwaps(found.value, terminal);
  if (problem !== undefined) terminal.err(`${problem}\n`);
  return found.ok ? EXIT.proved : EXIT.undecided;
}

function drawSwaps({ swaps: all, words }: SwapsReport, { out, colours, width }: Terminal): void {
  for (const { from, to, verdict, endings, line, why } of all) {
    const head = `${to} in place of ${from}: `;
    out(`${colours.bold(head)}${verdict === 'proved' ? colours.green(verdict) : verdict}\n`);
    for (const ending of endings) out(`${hang('  ', shown(ending), width)}\n`);
    if (line !== null) out(`${hang('  packet: ', line, width)}\n`);
    if (why !== '') out(`${hang('  ', why, width)}\n`);
    out('\n');
  }
  out(`${wrap(words, width)}\n`);
}
