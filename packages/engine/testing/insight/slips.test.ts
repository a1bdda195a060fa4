import { describe, expect, test } from 'vitest';
import { Slips } from '../../src/insight/slips/judge-slips.ts';
import { compile } from '../../src/note/compile.ts';
import { read } from '../../src/note/read.ts';
import { decide } from '../../src/proving/decide.ts';
import { DEFAULT_LIMITS } from '../../src/proving/question.ts';
import { NaiveSlips, type NaiveSlip } from '../naive/slips.ts';
import { slippable } from './slippable.ts';

function verdictOf(some: boolean, fails: boolean): string {
  return fails ? (some ? 'sometimes' : 'fatal') : 'harmless';
}

/** What is said to show always or never is exact; it may be told as sometimes and yet show always, now here and now there. */
const MAY_BE = {
  always: ['always'],
  sometimes: ['sometimes', 'always'],
  never: ['never'],
  unknown: ['always', 'sometimes', 'never'],
};

function noticeOf({ shown, hidden }: NaiveSlip): string {
  return hidden === 0 ? 'always' : shown === 0 ? 'never' : 'sometimes';
}

describe.each(slippable)('%s', (_name, text) => {
  const { routine, diagnostics } = compile(read(text));
  if (routine === undefined) throw new Error(`${text}\n${JSON.stringify(diagnostics)}`);
  const decision = decide(routine);
  const slips = Slips.of(routine, decision, DEFAULT_LIMITS);
  if (!slips.ok) throw new Error(`${decision.verdict}: ${JSON.stringify(slips.error)}`);
  const naive = new NaiveSlips(routine);
  const proved = decision.sentences.filter(({ verdict }) => verdict === 'proved').map(({ ending }) => ending);

  test('every slip does what trying all performances with it shows', { timeout: 60_000 }, () => {
    const found = [...slips.value.findings()];
    expect(found.length).toBeGreaterThan(0);
    for (const { possible, verdict, sentences, notice } of found) {
      const { step, slip } = possible;
      const told = `${step.number} ${slip.id}`;
      const tried = naive.judge(step, slip, proved);
      if (tried === null) throw new Error(`${told} cannot happen`);
      const each = tried.sentences.map(({ some, fails }) => verdictOf(some, fails));
      expect([told, ...sentences.map((one) => one.verdict)]).toEqual([told, ...each]);
      const fails = tried.sentences.some((one) => one.fails);
      expect(`${told} ${verdict}`).toBe(`${told} ${verdictOf(tried.together, fails)}`);
      expect([told, ...MAY_BE[notice.verdict]]).toContain(noticeOf(tried));
    }
  });

  test('a failing performance with a slip really fails', () => {
    for (const { sentences, verdict } of slips.value.findings())
      for (const { failure, verdict: one } of sentences) {
        expect(failure === undefined).toBe(one === 'harmless' || one === 'undecided');
        if (failure === undefined) continue;
        expect(verdict).not.toBe('harmless');
        expect(failure.path.filter(({ kind }) => kind === 'slip').length).toBeGreaterThan(0);
      }
  });
});
