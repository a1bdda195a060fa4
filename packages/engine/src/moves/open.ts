import type { Amount, PileRef } from '../phrases/values.ts';
import { decided, type Way } from './handling.ts';
import { allowed, pileName, pileSize, stuck, type Option, type Stuck, type View } from './move.ts';

/** Whether the sentence itself leaves the number open, so that there is something to tell. */
export function isOpen(amount: Amount): boolean {
  return amount.of !== 'exactly' && amount.of !== 'half';
}

/** No number of cards is left: there are too few, or an odd number that was to be halved. */
export function noNumber(amount: Amount, pile: PileRef, view: View): Stuck {
  const facts = { pile: pileName(pile, view), size: pileSize(pile, view) };
  return stuck(amount.of === 'half' ? 'odd-number-of-cards' : 'not-enough-cards', facts);
}

/** The numbers an amount leaves for cards of a pile, all of them and none included. */
export function numbersOf(amount: Amount, pile: PileRef, view: View): number[] {
  return allowed(amount, 0, pileSize(pile, view), view);
}

/** The beginning of a move that chooses how many cards of a pile; `way` says what is done with n of them. */
export function chooseNumber(
  amount: Amount,
  pile: PileRef,
  view: View,
  way: (n: number) => Omit<Way, 'key'>,
): readonly Option[] | Stuck {
  const numbers = numbersOf(amount, pile, view);
  return numbers.length === 0
    ? noNumber(amount, pile, view)
    : decided(numbers.map((n) => ({ key: n, ...way(n) })));
}

export type How = 'sideways' | 'end over end';

/** How hands turn a block; end over end exchanges the ends as well. */
export function turned(how: How): { readonly turned: 'side' | 'end' } {
  return { turned: how === 'sideways' ? 'side' : 'end' };
}

/** The reading of a turn whose manner was not said. */
export function turnReading(how: How): { word: string; taken: string; other: string }[] {
  return how === 'sideways'
    ? [
        {
          word: 'turn',
          taken: 'sideways, like a page, so that no end changes',
          other: 'Turn ... over end over end',
        },
      ]
    : [];
}
