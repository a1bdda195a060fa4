import type { Trouble } from '../base/diagnostic.ts';
import { good, type Result } from '../base/result.ts';
import type { Args } from '../phrases/values.ts';
import type { Exit, Meaning } from './claim.ts';
import { moved, or, type Formula } from './formula.ts';
import { claimById } from './index.ts';
import { slotsIn } from './piles.ts';
import { simplify } from './simplify.ts';

/** A sentence of the ending: a claim with its blanks, or a combination. */
export type Sentence =
  | { readonly says: 'claim'; readonly claim: string; readonly args: Args }
  | { readonly says: 'and' | 'or'; readonly parts: readonly Sentence[] }
  | { readonly says: 'not'; readonly part: Sentence }
  | { readonly says: 'if'; readonly when: Sentence; readonly then: Sentence }
  | { readonly says: 'exactly when'; readonly left: Sentence; readonly right: Sentence }
  /** The part holds after some cut of the pile, or of the pile turned over. */
  | { readonly says: 'up to'; readonly by: 'cut' | 'turn'; readonly pile: string; readonly part: Sentence };

/**
 * What a sentence says at an exit, simplified. A combination is vacuous when all its parts are; `if ... then` when its `then` is,
 * while whether the `when` ever happens is the prover's to find out.
 */
export function meaningOf(sentence: Sentence, exit: Exit): Result<Meaning, Trouble> {
  const meaning = meant(sentence, exit);
  if (!meaning.ok) return meaning;
  return good({ ...meaning.value, formula: simplify(meaning.value.formula, exit.cards) });
}

function meant(sentence: Sentence, exit: Exit): Result<Meaning, Trouble> {
  switch (sentence.says) {
    case 'claim':
      return claimById(sentence.claim).meaning(sentence.args, exit);
    case 'and':
    case 'or': {
      const { says } = sentence;
      return combined(sentence.parts, exit, (parts) => ({ is: says, parts }));
    }
    case 'not':
      return combined([sentence.part], exit, ([part]) => ({ is: 'not', part }));
    case 'exactly when':
      return combined([sentence.left, sentence.right], exit, ([left, right]) => ({
        is: 'exactly when',
        left,
        right,
      }));
    case 'if': {
      const all = combined([sentence.when, sentence.then], exit, ([when, then]) => ({
        is: 'if',
        when,
        then,
      }));
      if (!all.ok) return all;
      const then = meant(sentence.then, exit);
      return then.ok ? good({ ...all.value, vacuous: then.value.vacuous === true }) : then;
    }
    case 'up to': {
      const slots = slotsIn(sentence.pile, exit);
      if (!slots.ok) return slots;
      const cyclic = saidGoingRound(sentence, slots.value, exit);
      if (cyclic !== null) return cyclic;
      return combined([sentence.part], exit, ([part]) =>
        sentence.by === 'cut' ? upToCut(part, slots.value) : upToTurn(part, slots.value),
      );
    }
  }
}

/** A claim that can say by itself what it says up to a cut, when the pile it speaks of is the pile that is cut. */
function saidGoingRound(
  { by, part }: Sentence & { says: 'up to' },
  cut: readonly number[],
  exit: Exit,
): Result<Meaning, Trouble> | null {
  if (by !== 'cut' || part.says !== 'claim') return null;
  const claim = claimById(part.claim);
  const { pile } = part.args;
  if (claim.upToCut === undefined || typeof pile !== 'string') return null;
  const spoken = slotsIn(pile, exit);
  if (!spoken.ok || spoken.value[0] !== cut[0]) return null;
  return claim.meaning(claim.upToCut(part.args), exit);
}

function combined(
  sentences: readonly Sentence[],
  exit: Exit,
  make: (formulas: readonly Formula[]) => Formula,
): Result<Meaning, Trouble> {
  const formulas: Formula[] = [];
  const asides: Trouble[] = [];
  let vacuous = true;
  for (const sentence of sentences) {
    const meaning = meant(sentence, exit);
    if (!meaning.ok) return meaning;
    formulas.push(meaning.value.formula);
    asides.push(...(meaning.value.asides ?? []));
    vacuous &&= meaning.value.vacuous === true;
  }
  return good({ formula: make(formulas), vacuous, asides });
}

/** The part says something of the pile after one of its cuts: what it says of a place is then said of the card cut to there. */
function upToCut(part: Formula, slots: readonly number[]): Formula {
  const [first] = slots;
  const size = slots.length;
  const inside = (slot: number): boolean => slot >= first && slot < first + size;
  return or([
    part,
    ...slots.slice(1).map((_, i) =>
      moved(
        part,
        (slot) => (inside(slot) ? first + ((slot - first + i + 1) % size) : slot),
        () => false,
      ),
    ),
  ]);
}

/** The part as it stands, or of the pile turned over sideways: order reversed, every card showing its other side. */
function upToTurn(part: Formula, slots: readonly number[]): Formula {
  if (slots.length === 0) return part;
  const [first] = slots;
  const last = first + slots.length - 1;
  const inside = (slot: number): boolean => slot >= first && slot <= last;
  return or([part, moved(part, (slot) => (inside(slot) ? first + last - slot : slot), inside)]);
}
