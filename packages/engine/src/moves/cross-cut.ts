import type { Amount, PileRef } from '../phrases/values.ts';
import { phrase } from '../phrases/phrase.ts';
import { carry } from '../pictures/actions.ts';
import { cardCount, decided } from './handling.ts';
import { defineMove, pileName, pileSize } from './move.ts';
import { isOpen, noNumber, numbersOf } from './open.ts';

type CrossCutArgs = { pile: PileRef; at: Amount };

export const LOWER = 'lower part';
export const UPPER = 'upper part';

/** P7: the lifted packet goes to the table and the rest crosswise on it, to mark the cut that will be pointed at later. */
export const crossCut = defineMove<CrossCutArgs>({
  id: 'cross-cut',
  procedures: ['P7'],
  hands: 'cut',
  title: 'cross the cut',
  phrases: [
    phrase('cut {pile:pile} [at {at:amount}] and cross the cut'),
    phrase('cut [at {at:amount}] and cross the cut'),
    phrase('cross the cut [of {pile:pile}]', { at: { of: 'any' } }),
  ],
  defaults: { pile: 'packet', at: { of: 'any' } },
  help: 'A packet is lifted off, laid on the table, and the rest is put crosswise on it: the lower part and the upper part.',
  caution:
    'Where the parts cross lie the old top card, uppermost of the lower part, and the old bottom card, not the cards at the cut.',
  synonyms: ['criss-cross'],
  brings: () => ({ piles: [LOWER, UPPER] }),
  options(args, view) {
    const pile = pileName(args.pile, view);
    const size = pileSize(args.pile, view);
    const numbers = numbersOf(args.at, args.pile, view).filter((n) => n > 0 && n < size);
    if (numbers.length === 0) return noNumber(args.at, args.pile, view);
    return decided(
      numbers.map((n) => ({
        key: n,
        actions: [carry(pile, 0, n, LOWER, 0), carry(pile, 0, size - n, UPPER, 0)],
        next: null,
      })),
    );
  },
  say: ({ at }, [n]) => (isOpen(at) ? `cuts off ${cardCount(Number(n))}` : ''),
  examples: [
    {
      before: '1 2 3 4 5',
      sentence: 'Cut the packet and cross the cut.',
      choices: [2],
      after: 'lower part: 1 2; upper part: 3 4 5',
    },
  ],
});
