import { CLAIMS } from '../../src/claims/index.ts';
import type { Sentence } from '../../src/routine/routine.ts';
import { makeArgs } from './blank-values.ts';
import type { Dice } from './dice.ts';
import type { Scope } from './scope.ts';

/** A sentence of the ending at random: one claim, or a few held together. */
export function makeSentence(scope: Scope, dice: Dice, depth = 2): Sentence {
  const part = (): Sentence => makeSentence(scope, dice, depth - 1);
  if (depth === 0) return makeClaim(scope, dice);
  switch (dice.weighted([62, 6, 6, 6, 6, 6, 8])) {
    case 1:
      return { says: 'and', parts: [part(), part()] };
    case 2:
      return { says: 'or', parts: [part(), part()] };
    case 3:
      return { says: 'not', part: part() };
    case 4:
      return { says: 'if', when: part(), then: part() };
    case 5:
      return { says: 'exactly when', left: part(), right: part() };
    case 6: {
      const pile = dice.of(scope.there.length > 0 && dice.chance(90) ? scope.there : scope.piles);
      return { says: 'up to', by: dice.of(['cut', 'turn']), pile, part: part() };
    }
    default:
      return makeClaim(scope, dice);
  }
}

function makeClaim(scope: Scope, dice: Dice): Sentence {
  for (;;) {
    const claim = dice.of(CLAIMS);
    const args = makeArgs(dice.of(claim.phrases), claim.defaults, scope, dice);
    if ((claim.check?.(args, scope.cards) ?? []).length === 0)
      return { says: 'claim', claim: claim.id, args };
  }
}

/** Ids of all claims in a sentence. */
export function claimsIn(sentence: Sentence): string[] {
  switch (sentence.says) {
    case 'claim':
      return [sentence.claim];
    case 'and':
    case 'or':
      return sentence.parts.flatMap(claimsIn);
    case 'not':
    case 'up to':
      return claimsIn(sentence.part);
    case 'if':
      return [...claimsIn(sentence.when), ...claimsIn(sentence.then)];
    case 'exactly when':
      return [...claimsIn(sentence.left), ...claimsIn(sentence.right)];
  }
}
