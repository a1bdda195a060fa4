import { sayTrouble } from '@foregone/engine';
import { EXIT } from '../exit-codes.ts';
import type { JobLimits } from '../job-limits.ts';
import { jsonText, performanceJson } from '../json.ts';
import { runJob } from '../run-job.ts';
import { shown } from '../render/diagnostics.ts';
import { paintVerdict } from '../render/report.ts';
import { hang } from '../render/wrap.ts';
import type { Terminal } from '../terminal.ts';
import { complainOfNote, fileOrCode } from './complain.ts';

export interface AfterOptions {
  readonly json: boolean;
  readonly at: string;
  /** What happened, in sentences of a working. */
  readonly slip: string;
  readonly limits: JobLimits;
}

/** Endings besides the note's own that are shown. */
const MOST_SHOWN = 8;

/** What is still certain after a mishap, and which endings are left. */
export async function after(path: string, options: AfterOptions, terminal: Terminal): Promise<number> {
  const file = await fileOrCode(path, terminal);
  if (typeof file === 'number') return file;
  const { json, at, slip, limits } = options;
  const { report, after: found } = await runJob({ job: 'after', text: file.text, limits, at, slip });
  if (found === null) {
    complainOfNote(path, file.text, report, terminal);
    if (json) terminal.out(jsonText({ file: path, title: report.title, verdict: report.verdict }));
    return EXIT.notUnderstood;
  }
  if (!found.ok) {
    const problem = sayTrouble(found.error);
    terminal.err(`${problem}\n`);
    if (json) terminal.out(jsonText({ file: path, title: report.title, problem }));
    return EXIT.usage;
  }
  const { place, mishap, once, sentences, remains } = found.value;
  const isCertain = remains.length > 0;
  if (json) {
    terminal.out(
      jsonText({
        file: path,
        title: report.title,
        place,
        mishap,
        once,
        sentences: sentences.map(({ failure, ...one }) => {
          if (failure === null) return { ...one, failure };
          const { performance, ...rest } = failure;
          return { ...one, failure: { ...performanceJson(performance), ...rest } };
        }),
        remains,
      }),
    );
    return isCertain ? EXIT.proved : EXIT.refuted;
  }
  const { colours, width } = terminal;
  terminal.out(`${colours.bold(hang('', shown(`${capital(place)}: ${mishap}`), width))}\n`);
  if (!once) terminal.out(`${hang('  ', 'It may happen each time this comes round.', width)}\n`);
  for (const { text, verdict, failure } of sentences) {
    terminal.out(
      `\n${hang('  ', `${shown(text)}: ${verdict === 'proved' ? colours.green('still certain') : verdict === 'refuted' ? colours.red('can fail') : paintVerdict(verdict, terminal)}`, width)}\n`,
    );
    if (failure === null) continue;
    for (const line of [failure.stuck, failure.shows === '' ? '' : `${failure.shows}.`])
      if (line !== '') terminal.out(`${hang('    ', shown(capital(line)), width)}\n`);
  }
  const left = remains.filter(({ from }) => from !== 'note');
  if (left.length > 0) terminal.out(`\n${colours.bold('Certain all the same')}\n`);
  else if (!isCertain) terminal.out('\nNothing else that was looked for is certain.\n');
  for (const { words } of left.slice(0, MOST_SHOWN))
    terminal.out(`${hang('  ', `${shown(words)}.`, width)}\n`);
  const more = left.length - MOST_SHOWN;
  if (more > 0) terminal.out(`${colours.dim(`  and ${more} more: --json has them all`)}\n`);
  return isCertain ? EXIT.proved : EXIT.refuted;
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
