import { trouble, type Trouble } from '../base/diagnostic.ts';
import { bad, good, type Result } from '../base/result.ts';
import { moveById } from '../moves/index.ts';
import { numbersIn } from '../routine/program.ts';
import type { MoveStep, Routine, Step } from '../routine/routine.ts';
import { moveSteps } from '../routine/sight.ts';
import { compile } from './compile.ts';
import type { Note } from './note.ts';
import { read } from './read.ts';

/** The number that steps carry which no note has. */
export const PUT_IN = '+';

/**
 * Sentences of a working, several with semicolons or full stops, as steps of a note: they may speak of everything that the note names.
 * The troubles of the first sentence that is not understood, else.
 */
export function readSteps(note: Note, routine: Routine, sentences: string): Result<MoveStep[], Trouble> {
  const { working, text } = note;
  const said = sentences
    .replace(/\s+/g, ' ')
    .replace(/\.\s*(?=\S)/g, '; ')
    .replace(/[.;\s]+$/, '');
  if (working === null || said === '') return bad(trouble('mishap-empty'));
  // Read as one more step at the end, where everything has its name.
  const item = `\n\n${routine.steps.length + 1}. ${said}.\n\n`;
  const { to } = working.range;
  const { routine: longer, diagnostics } = compile(read(text.slice(0, to) + item + text.slice(to)));
  if (longer === undefined) {
    const wrong = diagnostics.find(
      ({ severity, range }) => severity === 'error' && range.from >= to && range.from < to + item.length,
    );
    return bad(wrong === undefined ? trouble('mishap-empty') : trouble(wrong.code, wrong.facts));
  }
  const steps = longer.steps.slice(routine.steps.length);
  if (steps.length === 0 || !steps.every((step) => step.do === 'move')) return bad(trouble('mishap-empty'));
  return good(steps.map((step) => ({ ...step, number: PUT_IN })));
}

/** Numbers that steps speak of though neither they nor those before them have named them. */
export function namesMissing(steps: readonly MoveStep[], before: readonly Step[]): string[] {
  const named = new Set(
    moveSteps([...before, ...steps]).flatMap(({ move, args }) => moveById(move).brings?.(args).numbers ?? []),
  );
  return [...new Set(steps.flatMap(({ args }) => numbersIn(args)))].filter((name) => !named.has(name));
}
