import { check, DEFAULT_LIMITS } from '@foregone/engine';
import { EXIT } from '../exit-codes.ts';
import { jsonText } from '../json.ts';
import { shown } from '../render/diagnostics.ts';
import { hang } from '../render/wrap.ts';
import type { Terminal } from '../terminal.ts';
import { complainOfNote, fileOrCode } from './complain.ts';

/** How every word with two meanings was taken, step by step. Nothing is proved for it. */
export async function readings(
  path: string,
  { json }: { readonly json: boolean },
  terminal: Terminal,
): Promise<number> {
  const file = await fileOrCode(path, terminal);
  if (typeof file === 'number') return file;
  const { report, compiled } = check(file.text, { ...DEFAULT_LIMITS, work: 0, states: 0, trials: 0 });
  const code = compiled.routine === undefined ? EXIT.notUnderstood : EXIT.proved;
  if (json) {
    terminal.out(jsonText({ file: path, title: report.title, readings: report.readings }));
    return code;
  }
  if (code !== EXIT.proved) complainOfNote(path, file.text, report, terminal);
  const { colours, width } = terminal;
  if (report.readings.length === 0) terminal.out('No word of this note has two meanings in the trade.\n');
  for (const { number, sentence, word, taken, other, confirmed } of report.readings) {
    terminal.out(`${colours.bold(hang(number === '' ? '' : `${number}  `, shown(sentence), width))}\n`);
    terminal.out(`${hang(`     "${word}": `, `${taken}${confirmed ? ' (confirmed)' : ''}`, width)}\n`);
    terminal.out(`${colours.dim(hang('     the other way: ', other, width))}\n`);
  }
  return code;
}
