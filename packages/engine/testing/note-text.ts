import { compile } from '../src/note/compile.ts';
import { read } from '../src/note/read.ts';
import type { Routine } from '../src/routine/routine.ts';

/** A note from its three lists; a step that begins with spaces is one of the block before it. */
export function noteText(
  setUp: readonly string[],
  working: readonly string[],
  ending: readonly string[],
): string {
  let number = 0;
  const steps = working.map((step) => (step.startsWith(' ') ? step : `${++number}. ${step}`));
  const bullets = (lines: readonly string[]): string => lines.map((line) => `- ${line}`).join('\n');
  return `# A try\n\n## Set-up\n\n${bullets(setUp)}\n\n## Working\n\n${steps.join('\n')}\n\n## Ending\n\n${bullets(ending)}\n`;
}

/** The routine of a note that has to be one. */
export function routineIn(text: string): Routine {
  const { routine, diagnostics } = compile(read(text));
  if (routine === undefined)
    throw new Error(JSON.stringify(diagnostics.filter(({ severity }) => severity === 'error')));
  return routine;
}
