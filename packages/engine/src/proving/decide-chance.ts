import { trouble } from '../base/diagnostic.ts';
import { rational, toNumber } from '../base/rational.ts';
import type { ChanceAsked } from '../routine/routine.ts';
import { chanceOf } from './chance.ts';
import type { Chance } from './chance-found.ts';
import type { Asked } from './decide-game.ts';
import type { SentenceDecision } from './decision.ts';
import { NOTHING, type Question } from './question.ts';

// Fractions cost more than tables told apart, so fewer of them are followed than in other searches.
const MOST_TABLES = 100_000;

/**
 * A sentence that asks for a chance, every choice made at random: proved or refuted where the chance is known exactly, else
 * undecided with what was estimated. One that holds without any luck is proved as all others are; `plain` says so. Where the performer
 * chooses, a rule can only do better than chance, so a chance that is too small refutes nothing.
 */
export function decideChance(
  question: Question,
  asked: Asked,
  least: ChanceAsked,
  game: boolean,
  plain: (asked: Asked) => SentenceDecision | undefined,
): SentenceDecision {
  const { ending, meanings } = asked;
  const { limits } = question;
  const states = Math.min(limits.states, MOST_TABLES);
  const chance = chanceOf(question, meanings, { states, runs: limits.trials, seed: limits.seed });
  const base = { ...NOTHING, ending, method: 'chance', chance } as const;
  if (meanings.trouble !== undefined) return { ...base, verdict: 'undecided', reason: meanings.trouble };
  if (meanings.allVacuous()) return { ...base, verdict: 'empty', reason: trouble('about-nothing') };
  if (chance.kind === 'exact') {
    const { n, d } = rational(BigInt(least.n), BigInt(least.d));
    if (chance.value.n * d >= n * chance.value.d) return { ...base, verdict: 'proved' };
    return game
      ? { ...base, verdict: 'undecided', reason: trouble('chance-performer') }
      : {
          ...base,
          verdict: 'refuted',
          reason: trouble('chance-too-small', { chance: sayNumber(toNumber(chance.value)) }),
        };
  }
  // Where no trial failed, or none could be made, the sentence may well hold always.
  if (chance.kind === 'none' || chance.hits === chance.runs) {
    const always = plain(asked);
    if (always?.verdict === 'proved' || always?.verdict === 'empty') return always;
  }
  return { ...base, verdict: 'undecided', reason: whyOpen(chance) };
}

function whyOpen(chance: Exclude<Chance, { kind: 'exact' }>) {
  if (chance.kind === 'none') return chance.why;
  const { low, high, runs, seed } = chance;
  return trouble('chance-estimate', { low: sayNumber(low), high: sayNumber(high), runs, seed });
}

/** Four decimals say all that an estimate can. */
function sayNumber(value: number): string {
  return value.toFixed(4).replace(/\.?0+$/, '');
}
