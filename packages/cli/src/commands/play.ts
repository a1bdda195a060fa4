import { check, DEFAULT_LIMITS, sayTrouble, seeded, Stage, type Played } from '@foregone/engine';
import { EXIT, exitOf } from '../exit-codes.ts';
import type { JobLimits } from '../job-limits.ts';
import { jsonText, performanceJson } from '../json.ts';
import { runJob } from '../run-job.ts';
import { shown } from '../render/diagnostics.ts';
import { drawPerformance } from '../render/performance.ts';
import { hang } from '../render/wrap.ts';
import type { Terminal } from '../terminal.ts';
import { ask } from './ask.ts';
import { complainOfNote, fileOrCode } from './complain.ts';

export interface PlayOptions {
  readonly json: boolean;
  readonly choices: string | undefined;
  readonly random: number | undefined;
  readonly failing: boolean;
  readonly limits: JobLimits;
}

/** A performance in the terminal: by choices given, at random, the failing one, or asked for one by one. */
export async function play(path: string, options: PlayOptions, terminal: Terminal): Promise<number> {
  const file = await fileOrCode(path, terminal);
  if (typeof file === 'number') return file;
  if (options.failing) return playFailing(path, file.text, options, terminal);
  const { report, compiled } = check(file.text, { ...DEFAULT_LIMITS, work: 0, states: 0, trials: 0 });
  if (compiled.routine === undefined) {
    complainOfNote(path, file.text, report, terminal);
    return EXIT.notUnderstood;
  }
  const stage = new Stage(compiled.routine, file.text);
  if (options.random !== undefined)
    return show(stage, stage.randomly(seeded(options.random)), report.title, options, terminal);
  const asked = options.choices === undefined && terminal.interactive && !options.json;
  if (asked) {
    const played = await ask(stage, report.title, terminal);
    return played === null ? EXIT.interrupted : closing(stage, played, terminal);
  }
  const keys = (options.choices ?? '').split(/,(?! )/).filter((key) => key !== '');
  const played = stage.byKeys(keys);
  if (!played.ok) {
    terminal.err(`${sayTrouble(played.error)}\n`);
    return EXIT.usage;
  }
  return show(stage, played.value, report.title, options, terminal);
}

function show(
  stage: Stage,
  played: Played,
  title: string,
  { json }: PlayOptions,
  terminal: Terminal,
): number {
  if (!json) {
    terminal.out(`${terminal.colours.bold(shown(title))}\n\n`);
    terminal.out(`${drawPerformance(stage.performance(played), terminal)}\n`);
    return closing(stage, played, terminal);
  }
  const judged = stage.judge(played);
  const stuck = played.stuck === undefined ? '' : sayTrouble(played.stuck);
  const sentences = judged.map(({ text, holds, shows }) => ({ text, holds: holds ?? null, shows }));
  terminal.out(
    jsonText({ title, ...performanceJson(stage.performance(played)), ended: played.ended, stuck, sentences }),
  );
  return codeOf(
    played,
    judged.every(({ holds }) => holds === true),
  );
}

/** How the performance ended and how every sentence stands. */
function closing(stage: Stage, played: Played, terminal: Terminal): number {
  const { colours, width } = terminal;
  if (played.stuck !== undefined) terminal.out(`\n${colours.red('Stuck')}: ${sayTrouble(played.stuck)}\n`);
  else if (!played.ended) terminal.out('\nGiven up: it goes on and on.\n');
  const judged = stage.judge(played);
  for (const { text, holds, shows, trouble } of judged) {
    const words =
      holds === true
        ? colours.green('true')
        : holds === false
          ? colours.red('false')
          : colours.yellow('no meaning');
    terminal.out(`\n${hang('', `${shown(text)}: ${words}`, width)}\n`);
    if (shows !== '') terminal.out(`${hang('     ', shown(shows), width)}\n`);
    if (trouble !== undefined) terminal.out(`${hang('     ', sayTrouble(trouble), width)}\n`);
  }
  return codeOf(
    played,
    judged.every(({ holds }) => holds === true),
  );
}

function codeOf({ ended }: Played, isTrue: boolean): number {
  return ended && isTrue ? EXIT.proved : EXIT.refuted;
}

async function playFailing(
  path: string,
  text: string,
  { json, limits }: PlayOptions,
  terminal: Terminal,
): Promise<number> {
  const { report } = await runJob({ job: 'check', text, limits, certify: false });
  if (report.verdict === 'not understood') {
    complainOfNote(path, text, report, terminal);
    return EXIT.notUnderstood;
  }
  const failed = report.sentences.find(({ failure }) => failure !== null);
  const { colours, width } = terminal;
  if (failed === undefined || failed.failure === null) {
    if (json) terminal.out(jsonText({ title: report.title, verdict: report.verdict, performance: null }));
    else terminal.out(`No failing performance is known. ${report.summary}\n`);
    return exitOf(report.verdict);
  }
  const { performance, stuck, shows, choices, shortest } = failed.failure;
  if (json) {
    const { title, verdict } = report;
    terminal.out(
      jsonText({
        title,
        verdict,
        sentence: failed.text,
        ...performanceJson(performance),
        choices,
        shortest,
        stuck,
        shows,
      }),
    );
    return exitOf(report.verdict);
  }
  terminal.out(`${colours.bold(shown(report.title))}\n\n${drawPerformance(performance, terminal)}\n`);
  if (stuck !== '') terminal.out(`\n${colours.red('Stuck')}: ${stuck}\n`);
  terminal.out(`\n${hang('', `${shown(failed.text)}: ${colours.red('false')}`, width)}\n`);
  if (shows !== '') terminal.out(`${hang('     ', shown(shows), width)}\n`);
  return exitOf(report.verdict);
}
