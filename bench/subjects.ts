import { compile } from '../packages/engine/src/note/compile.ts';
import { read } from '../packages/engine/src/note/read.ts';
import { decide } from '../packages/engine/src/proving/decide.ts';
import type { Decision } from '../packages/engine/src/proving/decision.ts';
import { momentsOf } from '../packages/engine/src/proving/moments.ts';
import { DEFAULT_LIMITS } from '../packages/engine/src/proving/question.ts';
import type { Routine } from '../packages/engine/src/routine/routine.ts';

/** From a note's text to its routine. */
export function compiled(text: string): Routine {
  const { routine, diagnostics } = compile(read(text));
  if (routine === undefined) throw new Error(diagnostics.map(({ code }) => code).join(' '));
  return routine;
}

/** The verdict, which must be as it should: a figure for a wrong answer is worth nothing. */
export function decided(routine: Routine, wanted: string): Decision {
  const decision = decide(routine);
  if (decision.verdict !== wanted) throw new Error(`${decision.verdict} instead of ${wanted}`);
  return decision;
}

/** Have and need of every sentence at every moment, as bases: everything that can be said of them follows. */
export function haveAndNeed(decision: Decision): unknown {
  return decision.sentences.map((sentence) => momentsOf(decision, sentence, DEFAULT_LIMITS));
}

/** The same written out as equations, as they are shown. */
export function equationsEverywhere(decision: Decision): number {
  let count = 0;
  for (const sentence of decision.sentences)
    for (const family of momentsOf(decision, sentence, DEFAULT_LIMITS) ?? [])
      for (const location of decision.region?.order ?? [])
        count += family.certainAt(location).length + family.neededAt(location).length;
  return count;
}
