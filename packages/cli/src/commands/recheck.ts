import { sayTrouble } from '@foregone/engine';
import { EXIT } from '../exit-codes.ts';
import { jsonText } from '../json.ts';
import { runJob } from '../run-job.ts';
import { shown } from '../render/diagnostics.ts';
import { hang } from '../render/wrap.ts';
import type { Terminal } from '../terminal.ts';
import { fileOrCode } from './complain.ts';

/** Checks a certificate: 0 when every proof in it was accepted, 1 when one was not, 2 when it is no certificate. */
export async function recheck(
  path: string,
  { json, work }: { readonly json: boolean; readonly work: number },
  terminal: Terminal,
): Promise<number> {
  const file = await fileOrCode(path, terminal);
  if (typeof file === 'number') return file;
  const answer = await runJob({ job: 'recheck', json: file.text, work });
  if (!answer.ok) {
    const words = sayTrouble(answer.error);
    if (json) terminal.out(jsonText({ file: path, accepted: false, problem: words, sentences: [] }));
    else terminal.err(`${path}: ${words}\n`);
    return EXIT.notUnderstood;
  }
  const { title, accepted, sentences } = answer.value;
  const told = sentences.map(({ text, accepted: good, fault, silent }) => ({
    text,
    accepted: good,
    ...(silent === true ? { silent } : {}),
    fault: fault === null ? null : { ...fault, words: sayTrouble(fault) },
  }));
  if (json) terminal.out(jsonText({ file: path, title, accepted, sentences: told }));
  else {
    const { colours, width } = terminal;
    terminal.out(
      `${colours.bold(title === '' ? path : shown(title))}: ${accepted ? colours.green('accepted') : colours.red('not accepted')}\n`,
    );
    for (const { text, accepted: good, fault, silent } of told) {
      const how = silent === true ? '  no proof  ' : good ? '  accepted  ' : '  refused   ';
      terminal.out(`${hang(how, shown(text), width)}\n`);
      if (fault !== null) terminal.out(`${hang('            ', fault.words, width)}\n`);
    }
  }
  return accepted ? EXIT.proved : EXIT.refuted;
}
