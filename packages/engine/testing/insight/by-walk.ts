import type { Routine } from '../../src/routine/routine.ts';
import { judge } from '../naive/judge.ts';
import { Bits } from '../naive/table.ts';
import { sentenceAt } from '../naive/truth.ts';
import { walkAll } from '../naive/walk.ts';

const MOST = 500_000;

/** Whether every sentence is true after every performance, by the walk that shares nothing with the search. */
export function provedByWalk(routine: Routine): boolean {
  const bits = new Bits();
  const walks = walkAll(routine, MOST, bits);
  return routine.endings.every(
    ({ sentence }) => judge(walks, sentenceAt(sentence), bits).verdict === 'proved',
  );
}
