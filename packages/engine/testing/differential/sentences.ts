import { CLAIMS } from '../../src/claims/index.ts';
import type { Sentence } from '../../src/routine/routine.ts';
import { makeArgs } from './blank-values.ts';
import type { Dice } from './dice.ts';
import type { Scope } from './scope.ts';

/** A sentence of the ending at random: one claim, or a few held together; null when none came to mind. */
export function makeSentence(scope: Scope, dice: Dice, depth = 2): Sentence | null {
  const parts = (): [Sentence, Sentence] | null => {
    const [first, second] = [makeSentence(scope, dice, depth - 1), makeSentence(scope, dice, depth - 1)];
    return first === null || second === null ? null : [first, second];
  };
  const how = depth === 0 ? 0 : dice.weighted([62, 6, 6, 6, 6, 6, 8]);
  if (how === 0) return makeClaim(scope, dice);
  if (how === 3 || how === 6) {
    const part = makeSentence(scope, dice, depth - 1);
    if (part === null) return null;
    if (how === 3) return { says: 'not', part };
    const pile = dice.of(scope.there.length > 0 && dice.chance(90) ? scope.there : scope.piles);
    return { says: 'up to', by: dice.of(['cut', 'turn']), pile, part };
  }
  const both = parts();
  if (both === null) return null;
  const [first, second] = both;
  if (how === 4) return { says: 'if', when: first, then: second };
  if (how === 5) return { says: 'exactly when', left: first, right: second };
  return { says: how === 1 ? 'and' : 'or', parts: both };
}

function makeClaim(scope: Scope, dice: Dice): Sentence | null {
  for (let tries = 0; tries < 8; tries++) {
    const claim = dice.of(CLAIMS);
    const args = makeArgs(dice.of(claim.phrases), claim.defaults, scope, dice);
    if ((claim.check?.(args, scope.cards) ?? []).length === 0)
      return { says: 'claim', claim: claim.id, args };
  }
  return null;
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
