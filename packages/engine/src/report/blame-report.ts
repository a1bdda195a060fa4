import { raisesOf, type Raise } from '../insight/slips/blame.ts';
import { patternOf } from '../insight/altering/choice-words.ts';
import { conditionFor } from '../insight/conditions/condition.ts';
import { moveById } from '../moves/index.ts';
import { START } from '../moves/move.ts';
import type { Decision, SentenceDecision } from '../proving/decision.ts';
import type { Limits } from '../proving/question.ts';
import type { Routine } from '../routine/routine.ts';
import { lostAt } from './lost.ts';
import { sayChance } from './words.ts';

/** Why a sentence fails, and what would save it. */
export interface Blame {
  /** The sentence of the ending. */
  readonly sentence: string;
  /** The step at which the shortest failing performance loses it, or on which it hangs; null where there is no such step. */
  readonly step: string | null;
  readonly words: string;
  /** The smallest condition on one choice under which it is proved; null where none was found. */
  readonly condition: BlameCondition | null;
  /** How likely it is with every choice at random; null where that is not known exactly. */
  readonly chance: string | null;
  /** Choices that make it likelier, the likeliest first. */
  readonly raises: readonly BlameRaise[];
}

export interface BlameCondition {
  /** The step that it restricts. */
  readonly step: string;
  /** Reads on after `It is certain when `. */
  readonly words: string;
  /** The step's sentence so restricted; empty where no sentence says it. */
  readonly text: string;
}

export interface BlameRaise {
  readonly step: string;
  /** `cuts 4`, `even numbers only` */
  readonly words: string;
  readonly chance: string;
}

// More than this is no advice.
const MOST_RAISES = 3;

/** What is to blame for each refuted sentence. */
export function blameFor(routine: Routine, decision: Decision, text: string, limits: Limits): Blame[] {
  return decision.sentences.flatMap((sentence) =>
    sentence.verdict === 'refuted' ? [blameOf(routine, decision, sentence, text, limits)] : [],
  );
}

function blameOf(
  routine: Routine,
  decision: Decision,
  { ending, failure }: SentenceDecision,
  text: string,
  limits: Limits,
): Blame {
  const { graph, starts } = decision;
  const lost =
    failure === undefined
      ? { step: null, words: 'It is not as likely as is asked for.' }
      : lostAt(graph, starts, ending, failure.way, text);
  const condition = conditionFor(routine, ending, limits);
  // Where already the plainest choice is a wrong one, it hangs on the choice that could save it.
  const hangs =
    lost.step === null && condition !== null
      ? { step: condition.step, words: `${lost.words} It hangs on what is chosen at step ${condition.step}.` }
      : lost;
  const found = raisesOf(routine, ending, decision, limits);
  return {
    sentence: ending.text,
    ...hangs,
    condition:
      condition === null ? null : { step: condition.step, words: condition.words, text: condition.text },
    chance: found === null ? null : sayChance({ kind: 'exact', value: found.chance }),
    raises: (found?.raises ?? [])
      // What the condition says is not said again.
      .filter(({ step, chance }) => step.number !== condition?.step || chance.n !== chance.d)
      .slice(0, MOST_RAISES)
      .map((raise) => ({
        step: raise.step.number,
        words: sayRaise(raise, decision),
        chance: sayChance({ kind: 'exact', value: raise.chance }),
      })),
  };
}

function sayRaise({ step, keys }: Raise, { graph }: Decision): string {
  const location = graph.locations.find(({ origin, phase }) => origin === step && phase === START);
  if (location === undefined) return keys.join(', ');
  const move = moveById(step.move);
  const numbers = keys.filter((key) => typeof key === 'number');
  if (keys.length > 3 && numbers.length === keys.length) {
    const all = graph.edges.flatMap(({ from, key }) =>
      graph.locations[from].origin === step && typeof key === 'number' ? [key] : [],
    );
    const ascending = (list: readonly number[]): number[] => [...new Set(list)].sort((a, b) => a - b);
    return patternOf(ascending(numbers), ascending(all)).words;
  }
  const said = [
    ...new Set(keys.map((key) => move.say(step.args, [key], graph.view(location)) || String(key))),
  ];
  return said.length < 2 ? said.join('') : `${said.slice(0, -1).join(', ')} or ${said[said.length - 1]}`;
}
