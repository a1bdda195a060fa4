import { describe, expect, test } from 'vitest';
import { check, afterMishap, sayTrouble } from '../../src/check.ts';
import { onceAt } from '../../src/insight/altering/once.ts';
import { placesOf } from '../../src/insight/altering/places.ts';
import { weakerThan } from '../../src/insight/slips/weaker.ts';
import { compile } from '../../src/note/compile.ts';
import { readSteps } from '../../src/note/read-steps.ts';
import { read } from '../../src/note/read.ts';
import type { Routine } from '../../src/routine/routine.ts';
import { NaiveMishap } from '../naive/mishap.ts';
import { slippable } from './slippable.ts';

const MISHAPS = [
  'Turn any card over in place.',
  'Cut the packet at 1',
  'Turn the top card over; cut the packet at 2.',
];

function routineOf(text: string): Routine {
  const { routine } = compile(read(text));
  if (routine === undefined) throw new Error(text);
  return routine;
}

const LOOPED = slippable.filter(([name]) => /turnover|one way|deals|heap/.test(name));

describe.each(LOOPED)('%s', (_name, text) => {
  const routine = routineOf(text);
  const places = placesOf(routine).flatMap(({ id, before }) =>
    (before !== undefined && before.do !== 'repeat') || id === 'end' ? [id] : [],
  );

  test.each(MISHAPS)('%s, at every place', (mishap) => {
    const steps = readSteps(read(text), routine, mishap);
    if (!steps.ok) throw new Error(sayTrouble(steps.error));
    const checked = check(text, { work: 0, states: 0, trials: 0, seed: 1 });
    for (const at of places) {
      const found = afterMishap(checked, at, mishap);
      if (found === null || !found.ok)
        throw new Error(`${at}: ${found === null ? '' : sayTrouble(found.error)}`);
      const naive = new NaiveMishap(
        routine,
        at === 'end' ? null : (placesOf(routine).find(({ id }) => id === at)?.before ?? null),
        steps.value,
      );
      for (const [i, { verdict }] of found.value.sentences.entries()) {
        const isCertain = naive.isCertain(routine.endings[i]);
        expect(`${at} ${routine.endings[i].text} ${verdict}`).toBe(
          `${at} ${routine.endings[i].text} ${isCertain ? 'proved' : 'refuted'}`,
        );
      }
      const less = routine.endings
        .flatMap((ending) => weakerThan(ending, routine.cards))
        .map(({ ending }) => ending);
      const weaker = found.value.remains.flatMap(({ words, from }) => (from === 'weaker' ? [words] : []));
      const untrue = weaker.filter((words) => {
        const ending = less.find((one) => one.text === words);
        return ending === undefined || !naive.isCertain(ending);
      });
      expect([at, ...untrue]).toEqual([at]);
    }
  });
});

test('what is not understood, and numbers that are not named yet', () => {
  const [, text] = slippable.find(([name]) => name.startsWith('a number named')) ?? ['', ''];
  const checked = check(text);
  const told = (at: string, mishap: string): string => {
    const found = afterMishap(checked, at, mishap);
    return found === null ? 'not understood' : found.ok ? found.value.mishap : sayTrouble(found.error);
  };
  expect(told('3', 'deal n cards to the left')).toBe('Deal N cards to the left.');
  expect(told('1', 'deal n cards to the left')).toBe('N has no value yet before step 1.');
  expect(told('9', 'cut the packet')).toBe('There is no place 9 in the working.');
  expect(told('2', '')).toBe('What happened is not told in sentences of a working.');
  expect(told('2', 'sneeze')).toContain('not understood');
});

test('a mishap in a round happens in one round only, in any of them', () => {
  const routine = routineOf(
    '## Set-up\n\n- packet: 4 cards, face down\n\n## Working\n\n1. At least 2 times:\n   1. Cut the packet.\n\n## Ending\n\n- Every card is face down.\n',
  );
  const [cut] = placesOf(routine).filter(({ id }) => id === '1.1');
  const once = onceAt(routine, cut, []);
  expect(once?.isOnce).toBe(true);
  const [step] = once?.routine.steps ?? [];
  // The first round with one at least after it, or any later one.
  expect(step).toMatchObject({ do: 'either', branches: [{ length: 3 }, { length: 3 }] });
});
