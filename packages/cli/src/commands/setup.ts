import {
  sayTrouble,
  type FoundSetUpData,
  type SentenceNeed,
  type SetUpFaults,
  type SetUpReport,
  type SetUpsFound,
  type StructureData,
} from '@foregone/engine';
import { EXIT } from '../exit-codes.ts';
import type { JobLimits } from '../job-limits.ts';
import { jsonText, tableJson } from '../json.ts';
import { runJob } from '../run-job.ts';
import { shown } from '../render/diagnostics.ts';
import { drawTable } from '../render/table.ts';
import { hang, wrap } from '../render/wrap.ts';
import type { Terminal } from '../terminal.ts';
import { complainOfNote, fileOrCode } from './complain.ts';

export interface SetUpOptions {
  readonly json: boolean;
  /** Cards at hand, among which a set-up is sought. */
  readonly from: string | undefined;
  /** Cards as they lie, to be checked. */
  readonly check: string | undefined;
  readonly limits: JobLimits;
}

/** What the start must satisfy; a set-up among the cards at hand; the first fault of a stacked packet. */
export async function setUp(path: string, options: SetUpOptions, terminal: Terminal): Promise<number> {
  const file = await fileOrCode(path, terminal);
  if (typeof file === 'number') return file;
  const { json, from = null, check = null, limits } = options;
  const answer = await runJob({ job: 'set-up', text: file.text, limits, from, check });
  const { report, needs, found, faults } = answer;
  if (report.verdict === 'not understood') {
    complainOfNote(path, file.text, report, terminal);
    return EXIT.notUnderstood;
  }
  const failed = [needs, found, faults].find((one) => one?.ok === false);
  const problem = failed?.ok === false ? sayTrouble(failed.error) : undefined;
  if (json)
    terminal.out(
      jsonText({
        file: path,
        title: report.title,
        ...(problem === undefined ? {} : { problem }),
        ...(needs.ok ? { needs: needs.value } : {}),
        ...(found?.ok === true ? { found: found.value.found.map(foundJson) } : {}),
        ...(faults?.ok === true ? { check: faults.value } : {}),
      }),
    );
  else {
    if (needs.ok && from === null && check === null) drawNeeds(needs.value, terminal);
    if (found?.ok === true) drawFound(found.value, terminal);
    if (faults?.ok === true) drawFaults(faults.value, terminal);
  }
  if (problem !== undefined) terminal.err(`${problem}\n`);
  if (failed?.ok === false) return exitOfTrouble(failed.error.code);
  return faults?.ok === true && !faults.value.holds ? EXIT.refuted : EXIT.proved;
}

/** None there is, none was found, or the cards named make no sense. */
function exitOfTrouble(code: string): number {
  if (/^set-up-(none|too-few)/.test(code)) return EXIT.refuted;
  return /^(set-up-not|budget)-/.test(code) ? EXIT.undecided : EXIT.usage;
}

function foundJson({ table, ...one }: FoundSetUpData): Record<string, unknown> {
  return { ...one, table: tableJson(table) };
}

function drawNeeds({ sentences, words }: SetUpReport, terminal: Terminal): void {
  const { colours, width } = terminal;
  for (const sentence of sentences) {
    terminal.out(`${colours.bold(hang('', shown(sentence.text), width))}\n`);
    for (const line of linesOf(sentence)) terminal.out(`${hang('  ', line, width)}\n`);
    terminal.out('\n');
  }
  terminal.out(`${wrap(words, width)}\n`);
}

function linesOf({ needs, asLaid, why }: SentenceNeed): string[] {
  const named = (list: readonly StructureData[]): string[] =>
    list.map(({ trade, name, words }) => `${[trade, name].filter(Boolean).join(' ')}: ${words}`);
  const laid = named(asLaid).map((line) => `the cards lying as the set-up has them, ${line}`);
  return [...laid, ...named(needs?.structures ?? []), ...(needs?.rest ?? []), ...(why === '' ? [] : [why])];
}

function drawFound({ found, words }: SetUpsFound, terminal: Terminal): void {
  const { colours, width } = terminal;
  found.forEach(({ label, table, looks, fromNewPack, fromShuffled }) => {
    terminal.out(`${colours.bold(label)}\n`);
    terminal.out(`${drawTable(table, colours, width, 2)}\n`);
    terminal.out(`${hang('  looks: ', looks.words, width)}\n`);
    for (const [where, way] of [
      ['from new-pack order', fromNewPack],
      ['from a shuffled packet', fromShuffled],
    ] as const) {
      if (way === null) continue;
      terminal.out(`  ${where}, ${way.handlings} ${way.handlings === 1 ? 'handling' : 'handlings'}:\n`);
      way.steps.forEach((step, i) => terminal.out(`${hang(`    ${i + 1}. `, step, width)}\n`));
    }
    terminal.out('\n');
  });
  terminal.out(`${wrap(words, width)}\n`);
}

function drawFaults({ words }: SetUpFaults, { out, width }: Terminal): void {
  out(`${wrap(words, width)}\n`);
}
