import fc from 'fast-check';
import { expect, test } from 'vitest';
import { Slips } from '../../src/insight/slips/judge-slips.ts';
import { decide } from '../../src/proving/decide.ts';
import { DEFAULT_LIMITS } from '../../src/proving/question.ts';
import type { Routine, Step } from '../../src/routine/routine.ts';
import { makeCase, rolls } from '../differential/cases.ts';
import { written } from '../differential/compare.ts';
import { NaiveSlips } from '../naive/slips.ts';

const RUNS = 80;
// Slips make a walk some ten times as long.
const MOST_NODES = 250;

/** The same steps, each an object and a number of its own. */
function apart(steps: readonly Step[], before = ''): Step[] {
  return steps.map((step, i): Step => {
    const number = `${before}${i + 1}`;
    switch (step.do) {
      case 'move':
        return { ...step, number };
      case 'repeat':
      case 'each':
        return { ...step, number, body: apart(step.body, `${number}.`) };
      case 'either':
        return {
          ...step,
          number,
          branches: step.branches.map((one, k) => apart(one, `${number}${'abc'[k]}`)),
        };
      case 'if':
        return {
          ...step,
          number,
          then: apart(step.then, `${number}t`),
          otherwise: apart(step.otherwise, `${number}o`),
        };
    }
  });
}

/** What may be true where something is said. */
const VERDICTS = {
  harmless: ['harmless'],
  sometimes: ['sometimes'],
  fatal: ['fatal'],
  harmful: ['sometimes', 'fatal'],
  undecided: ['harmless', 'sometimes', 'fatal'],
};
const NOTICES = {
  always: ['always'],
  sometimes: ['sometimes', 'always'],
  never: ['never'],
  unknown: ['always', 'sometimes', 'never', 'unknown'],
};

function verdictOf(some: boolean, fails: boolean): string {
  return fails ? (some ? 'sometimes' : 'fatal') : 'harmless';
}

test('slips in random routines do what trying all performances shows', { timeout: 240_000 }, () => {
  const counts = new Map<string, number>();
  fc.assert(
    fc.property(rolls, (list) => {
      const made = makeCase(list);
      fc.pre(made !== null && made.walks.reduce((sum, { nodes }) => sum + nodes.length, 0) <= MOST_NODES);
      const routine: Routine = { ...made.routine, steps: apart(made.routine.steps) };
      const decision = decide(routine);
      const proved = decision.sentences
        .filter(({ verdict }) => verdict === 'proved')
        .map(({ ending }) => ending);
      fc.pre(proved.length > 0);
      const slips = Slips.of(routine, decision, DEFAULT_LIMITS);
      fc.pre(slips.ok);
      const naive = new NaiveSlips(routine);
      for (const { possible, sentences, notice } of slips.value.findings()) {
        const { step, slip } = possible;
        const told = `${step.number} ${step.move} ${slip.id}\n${written(routine)}`;
        const tried = naive.judge(step, slip, proved);
        if (tried === null) throw new Error(`cannot happen: ${told}`);
        sentences.forEach(({ verdict }, i) => {
          const { some, fails } = tried.sentences[i];
          counts.set(verdict, (counts.get(verdict) ?? 0) + 1);
          // Where no performance with the slip ends, nothing can be right or wrong.
          const right = some || fails ? verdictOf(some, fails) : VERDICTS[verdict][0];
          expect([told, ...VERDICTS[verdict]]).toContain(right);
        });
        const shown = tried.hidden === 0 ? 'always' : tried.shown === 0 ? 'never' : 'sometimes';
        expect([told, ...NOTICES[notice.verdict]]).toContain(
          tried.shown + tried.hidden === 0 ? notice.verdict : shown,
        );
      }
    }),
    { seed: 20, numRuns: RUNS },
  );
  for (const verdict of ['harmless', 'sometimes', 'fatal'])
    expect(counts.get(verdict) ?? 0).toBeGreaterThan(RUNS / 4);
  expect((counts.get('harmful') ?? 0) + (counts.get('undecided') ?? 0)).toBeLessThan(RUNS / 5);
});
