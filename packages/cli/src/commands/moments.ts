import { grouped, sayTrouble, type MomentData, type StatementData, type StepMoments } from '@foregone/engine';
import { exitOf } from '../exit-codes.ts';
import type { JobLimits } from '../job-limits.ts';
import { jsonText } from '../json.ts';
import { runJob } from '../run-job.ts';
import { shown } from '../render/diagnostics.ts';
import { hang, wrap } from '../render/wrap.ts';
import type { Terminal } from '../terminal.ts';
import { drawStructures } from '../render/structures.ts';
import { complainOfNote, fileOrCode } from './complain.ts';

export interface MomentsOptions {
  readonly json: boolean;
  readonly all: boolean;
  readonly limits: JobLimits;
}

/** Statements of one side that are shown unless all are asked for. */
const MOST_SHOWN = 6;

/** What is certain and what is needed at each step, for each sentence of the ending. */
export async function moments(
  path: string,
  { json, all, limits }: MomentsOptions,
  terminal: Terminal,
): Promise<number> {
  const file = await fileOrCode(path, terminal);
  if (typeof file === 'number') return file;
  const { report, moments: found, structures } = await runJob({ job: 'moments', text: file.text, limits });
  const problem = found.ok ? undefined : sayTrouble(found.error);
  const sentences = found.ok ? found.value : [];
  const named = structures.ok ? structures.value : [];
  if (report.verdict === 'not understood') complainOfNote(path, file.text, report, terminal);
  else if (problem !== undefined) terminal.err(`${problem}\n`);
  if (json) {
    const { title, verdict } = report;
    terminal.out(
      jsonText({
        file: path,
        title,
        verdict,
        ...(problem === undefined ? {} : { problem }),
        sentences,
        structures: named,
      }),
    );
    return exitOf(verdict);
  }
  const { colours, width } = terminal;
  sentences.forEach(({ text, steps }, i) => {
    terminal.out(`${i > 0 ? '\n' : ''}${colours.bold(hang('', shown(text), width))}\n`);
    if (steps === null)
      terminal.out(
        `${wrap('What is certain and needed cannot be said as equations here: the sentence is no conjunction of equations, or a step looks at cards.', width)}\n`,
      );
    else for (const step of steps) terminal.out(drawStep(step, all, terminal));
  });
  if (named.length > 0) {
    terminal.out(`\n${colours.bold('Structures by name')}\n`);
    for (const step of named) terminal.out(drawStructures(step, all, terminal));
  }
  return exitOf(report.verdict);
}

function drawStep(
  { number, sentence, moments: all }: StepMoments,
  isWhole: boolean,
  terminal: Terminal,
): string {
  const { colours, width } = terminal;
  const head = colours.bold(hang(`${number.padEnd(3)}  `, shown(sentence), width));
  const groups = alike(all);
  const told = isWhole ? groups : groups.slice(0, 1);
  const lines = told.flatMap(({ moment, count }) => {
    const where =
      all.length === 1
        ? []
        : [
            colours.dim(
              `     with ${sizes(moment)}${count > 1 ? `, and ${grouped(count - 1)} more moments alike` : ''}:`,
            ),
          ];
    const isSame = words(moment.have) === words(moment.need);
    return [
      ...where,
      ...side(isSame ? 'have and need' : 'have', moment.have, isWhole, terminal),
      ...(isSame ? [] : side('need', moment.need, isWhole, terminal)),
    ];
  });
  const left = groups.length - told.length;
  const more =
    left > 0
      ? [
          colours.dim(
            `     ${left} more ${left === 1 ? 'moment' : 'moments'} of this step with other piles: --all shows ${left === 1 ? 'it' : 'them'}`,
          ),
        ]
      : [];
  return `\n${[head, ...lines, ...more].join('\n')}\n`;
}

function words(statements: readonly StatementData[]): string {
  return statements.map((one) => one.words).join('\n');
}

/** Moments that say the same, taken together. */
function alike(all: readonly MomentData[]): { moment: MomentData; count: number }[] {
  const groups = new Map<string, { moment: MomentData; count: number }>();
  for (const moment of all) {
    const key = JSON.stringify([
      moment.have.map(({ words }) => words),
      moment.need.map(({ words }) => words),
    ]);
    const known = groups.get(key);
    if (known === undefined) groups.set(key, { moment, count: 1 });
    else known.count++;
  }
  return [...groups.values()];
}

function sizes({ sizes: piles, numbers }: MomentData): string {
  const words = Object.entries(piles).map(([name, size]) => `${size} in ${name.replace(/^~/, '')}`);
  const named = Object.entries(numbers).flatMap(([name, n]) =>
    /^[~]|^that /.test(name) ? [] : [`${name} = ${n}`],
  );
  return [...words, ...named].join(', ');
}

function side(
  name: string,
  statements: readonly StatementData[],
  isWhole: boolean,
  { colours, width }: Terminal,
): string[] {
  if (statements.length === 0) return [`     ${name}  nothing`];
  const told = isWhole ? statements : statements.slice(0, MOST_SHOWN);
  const lines = told.map((one, i) =>
    hang(`     ${i === 0 ? name : ' '.repeat(name.length)}  `, one.words, width),
  );
  const left = statements.length - told.length;
  return left === 0 ? lines : [...lines, colours.dim(`           and ${left} more: --all shows them`)];
}
