import type { Facts, Range } from '../../src/base/diagnostic.ts';
import type { Exit } from '../../src/claims/claim.ts';
import { meaningOf } from '../../src/claims/sentence.ts';
import { compile } from '../../src/note/compile.ts';
import { read } from '../../src/note/read.ts';
import type { Routine } from '../../src/routine/routine.ts';
import { exitAt } from '../naive/judge.ts';
import { settle } from '../naive/machine.ts';
import { Bits } from '../naive/table.ts';
import { walkAll } from '../naive/walk.ts';

/** What was said of a note: by code, place and facts. */
export interface Said {
  readonly code: string;
  readonly range: Range;
  readonly facts: Facts;
}

/** A note without the marks around the place that is blamed, and that place. */
export function unmarked(marked: string): { text: string; range: Range } {
  const from = marked.indexOf('⟦');
  const to = marked.indexOf('⟧') - 1;
  if (from < 0 || to < from) throw new Error(`no place is marked in:\n${marked}`);
  return { text: marked.replace('⟦', '').replace('⟧', ''), range: { from, to } };
}

export function saidOnReading(text: string): readonly Said[] {
  return compile(read(text)).diagnostics;
}

/** Where performances get stuck, tried one and all. */
export function saidOnPerforming(text: string): readonly Said[] {
  const said: Said[] = [];
  for (const walk of walked(routineOf(text)))
    for (const { node, trouble } of walk.stuck) {
      const { decision } = settle(node.moment);
      if (decision.decide !== 'move') throw new Error('stuck where nothing is moved');
      said.push({ ...trouble, range: decision.step.range });
    }
  return said;
}

/** What stands against judging the sentences of the ending, at every exit there is. */
export function saidOnJudging(text: string): readonly Said[] {
  const routine = routineOf(text);
  return walked(routine).flatMap((walk) =>
    walk.exits.flatMap((node) =>
      routine.endings.flatMap(({ sentence, range }) => {
        const exit = exitAt(walk.start, node.moment);
        const meaning = meaningOf(sentence, { ...exit, start: known(routine, exit.start) });
        const troubles = meaning.ok ? (meaning.value.asides ?? []) : [meaning.error];
        return troubles.map((trouble) => ({ ...trouble, range }));
      }),
    ),
  );
}

/** Orders that the set-up settles; the walker knows the one it has chosen. */
function known(routine: Routine, start: Exit['start']): Exit['start'] {
  const open = new Set(routine.setUp.freedoms.flatMap((one) => (one.free === 'order' ? [one.pile] : [])));
  return Object.fromEntries(Object.entries(start).filter(([pile]) => !open.has(pile)));
}

function walked(routine: Routine) {
  return walkAll(routine, 20_000, new Bits());
}

function routineOf(text: string): Routine {
  const { routine, diagnostics } = compile(read(text));
  if (routine === undefined) throw new Error(`not read: ${JSON.stringify(diagnostics)}`);
  return routine;
}
