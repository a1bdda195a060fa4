import { compile } from '../../src/note/compile.ts';
import { read } from '../../src/note/read.ts';
import { decide } from '../../src/proving/decide.ts';
import type { VerdictName } from '../../src/proving/decision.ts';
import type { Routine } from '../../src/routine/routine.ts';
import { judge } from '../naive/judge.ts';
import { Bits } from '../naive/table.ts';
import { sentenceAt } from '../naive/truth.ts';
import { walkAll } from '../naive/walk.ts';

export function routineOf(setUp: string, working: string, ...endings: readonly string[]): Routine {
  const text = `## Set-up\n- ${setUp}\n## Working\n${working}\n## Ending\n${endings.map((one) => `- ${one}\n`).join('')}`;
  const { routine, diagnostics } = compile(read(text));
  if (routine === undefined) throw new Error(`${text}\n${JSON.stringify(diagnostics)}`);
  return routine;
}

/** More tables than a small effect has. */
const MOST_NODES = 400_000;

/** The engine's verdict on every sentence, once every performance has been walked through by brute force and gave the same. */
export function verdictsByBoth(setUp: string, working: string, ...endings: readonly string[]): VerdictName[] {
  const routine = routineOf(setUp, working, ...endings);
  const bits = new Bits();
  const walks = walkAll(routine, MOST_NODES, bits);
  const walked = routine.endings.map(({ sentence }) => judge(walks, sentenceAt(sentence), bits).verdict);
  const decided = decide(routine).sentences.map(({ verdict }) => verdict);
  if (decided.join() !== walked.join())
    throw new Error(`engine: ${decided.join()}; by brute force: ${walked.join()}`);
  return decided;
}
