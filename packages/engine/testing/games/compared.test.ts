import { expect, test } from 'vitest';
import { seeded } from '../../src/base/seeded.ts';
import { compile } from '../../src/note/compile.ts';
import { read } from '../../src/note/read.ts';
import type { SentenceDecision } from '../../src/proving/decision.ts';
import { decide } from '../../src/proving/decide.ts';
import { DEFAULT_LIMITS } from '../../src/proving/question.ts';
import type { Routine } from '../../src/routine/routine.ts';
import { canWin } from '../naive/game.ts';
import { exitAt } from '../naive/judge.ts';
import { replay } from '../naive/replay.ts';
import { startsOf } from '../naive/starts.ts';
import { Bits } from '../naive/table.ts';
import { sentenceAt } from '../naive/truth.ts';
import { TooBig } from '../naive/walk.ts';
import { randomNote } from './random-games.ts';

const LIMITS = { ...DEFAULT_LIMITS, states: 20_000, work: 400_000 };
const PATIENCE = { spectators: 3, performer: 4 };

/** Whether the failing performance, gone through plainly, ends with the sentence false or gets stuck. */
function failsIndeed(routine: Routine, { ending, failure }: SentenceDecision): boolean {
  const bits = new Bits();
  const [start] = startsOf(routine);
  const keys = (failure?.way.path ?? []).map(({ key }) => key);
  const { moment, end } = replay(routine, start, keys, bits);
  if (end === 'stuck') return failure?.stuck !== undefined;
  const said = sentenceAt(ending.sentence)(exitAt(start, moment), bits);
  return end === 'exit' && said.ok && !said.value.test(moment.table);
}

test('plain recursion over what is public comes to the same verdicts', { timeout: 60_000 }, () => {
  const random = seeded(7);
  const wrong: string[] = [];
  const demand = (holds: boolean, what: string): void => void (holds || wrong.push(what));
  const seen = { proved: 0, refuted: 0, rules: 0, secrets: 0, together: 0, shown: 0 };
  for (let i = 0; i < 140; i++) {
    const text = randomNote(random);
    const { routine } = compile(read(text));
    if (routine === undefined) continue;
    const { sentences } = decide(routine, LIMITS);
    const naive = (all: readonly SentenceDecision[]): boolean =>
      canWin(
        routine,
        all.map(({ ending }) => ending.sentence),
        new Bits(),
        PATIENCE,
        20_000,
      );
    try {
      const held = sentences.filter(({ verdict }) => verdict === 'proved');
      for (const one of sentences) {
        if (one.reason?.code === 'no-common-rule') {
          demand(naive([one]) && naive(held) && !naive([...held, one]), `no common rule: ${text}`);
          seen.together++;
        } else {
          demand(one.verdict === (naive([one]) ? 'proved' : 'refuted'), `${one.verdict}: ${text}`);
          if (one.verdict === 'proved') seen.proved++;
          else seen.refuted++;
          if (one.method === 'rule' && one.verdict === 'proved') seen.rules++;
          if (one.reason?.code === 'needs-secret') seen.secrets++;
        }
        const open = routine.setUp.freedoms.length > 0;
        const unended = ['rule-never-ends', 'no-choice-fits'].includes(one.failure?.stuck?.code ?? '');
        if (one.verdict === 'refuted' && !open && !unended) {
          demand(failsIndeed(routine, one), `does not fail: ${text}`);
          seen.shown++;
        }
      }
      demand(held.length < 2 || naive(held), `together: ${text}`);
    } catch (error) {
      if (!(error instanceof TooBig)) throw error;
    }
  }
  expect(wrong).toEqual([]);
  expect(seen.proved).toBeGreaterThan(30);
  expect(seen.refuted).toBeGreaterThan(60);
  expect(seen.rules).toBeGreaterThan(25);
  expect(seen.secrets).toBeGreaterThan(1);
  expect(seen.together).toBeGreaterThan(0);
  expect(seen.shown).toBeGreaterThan(50);
});
