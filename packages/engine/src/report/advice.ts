import { trouble } from '../base/diagnostic.ts';
import type { Compiled } from '../note/compile.ts';
import { conditionFor, type Condition } from '../insight/conditions/condition.ts';
import { sizesOf } from '../insight/likeness/sizes.ts';
import { spokenIn, type Spoken } from '../insight/conditions/spoken.ts';
import type { Decision } from '../proving/decision.ts';
import type { Limits } from '../proving/question.ts';
import type { Describe } from './failure.ts';

/** What would save a sentence that can fail, and what has to be said for one that cannot. */
export interface Advice {
  /** For each sentence of the ending, in order: when it works, in whole sentences; none for those that are not refuted or that nothing saves. */
  readonly conditions: readonly (readonly string[])[];
  /** Bounds of the spectators' choices that proved sentences rest on, each with the line of patter that says it, null where none does. */
  readonly spoken: readonly Spoken[];
  /** What is to be told of those that nobody says, in whole sentences. */
  readonly unsaid: readonly string[];
}

/** Sizes on either side of the note's own that are tried. */
const NEAR = 8;
/** What leaves less is no advice. */
const LEAST_SHARE = 0.2;
const LEAST_SIZES = 3;

/** Within `limits` all together: what was not found by then is left out. */
export function adviceFor(
  text: string,
  { routine, outline }: Pick<Compiled, 'routine' | 'outline'>,
  decision: Decision,
  limits: Limits,
  describe: Describe,
): Advice {
  const none: Advice = { conditions: decision.sentences.map(() => []), spoken: [], unsaid: [] };
  if (routine === undefined) return none;
  const shared = sharing(limits);
  const refuted = decision.sentences.filter(({ verdict }) => verdict === 'refuted').length;
  const sizes = refuted === 0 ? null : nearSizes(text, routine.cards.length, shared);
  const spoken = refuted === decision.sentences.length ? [] : spokenIn(routine, outline, shared);
  return {
    conditions: decision.sentences.map(({ ending, verdict }) => {
      if (verdict !== 'refuted' || ending.chance !== undefined) return [];
      const condition = conditionFor(routine, ending, shared);
      return [
        ...(condition === null || condition.share < LEAST_SHARE ? [] : [sayCondition(condition)]),
        ...(sizes === null ? [] : [sizes]),
      ];
    }),
    spoken,
    unsaid: spoken.flatMap(({ step, words, line }) => {
      if (line !== null) return [];
      const told = describe(trouble('restriction-unsaid', { step, words }));
      return [`${told.words} ${told.remedy}`];
    }),
  };
}

/** `Works when N is even: "The spectator names an even number from 1 to 8, call it N."` */
export function sayCondition({ kind, words, text }: Pick<Condition, 'kind' | 'words' | 'text'>): string {
  return text === '' || kind === 'wording' ? `Works when ${words}.` : `Works when ${words}: "${text}"`;
}

function nearSizes(text: string, own: number, limits: Limits): string | null {
  const range = { least: Math.max(2, own - NEAR), most: own + NEAR, numbers: 'scaled' } as const;
  const found = sizesOf(text, range, limits);
  if (typeof found === 'string' || found.how !== 'proved') return null;
  const { pattern, rows } = found;
  const tried = rows.filter(({ verdict }) => verdict !== 'does not fit').map(({ cards }) => cards);
  const works = rows.filter(({ verdict }) => verdict === 'proved').length;
  if (works < LEAST_SIZES || works < LEAST_SHARE * tried.length) return null;
  return `Works with another number of cards, of those from ${tried[0]} to ${tried[tried.length - 1]}: ${pattern}.`;
}

/** One allowance for many decisions: each asks before it goes on, and is told no when all together have spent it. */
function sharing(limits: Limits): Limits {
  let before = 0;
  let last = 0;
  return {
    ...limits,
    goOn: (spent) => {
      // A decision counts from nothing.
      if (spent < last) before += last;
      last = spent;
      return before + spent <= limits.work && (limits.goOn?.(before + spent) ?? true);
    },
  };
}
