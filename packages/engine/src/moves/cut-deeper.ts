import type { Amount, PileRef } from '../phrases/values.ts';
import { phrase } from '../phrases/phrase.ts';
import { carry } from '../pictures/actions.ts';
import { cardCount, decided, within } from './handling.ts';
import { allowed, defineMove, pileName, pileSize, START, stuck, type View } from './move.ts';
import { isOpen, noNumber } from './open.ts';

type CutDeeperArgs = { pile: PileRef; first: Amount; second: Amount };

function deeper(args: CutDeeperArgs, first: number, view: View): number[] {
  return allowed(args.second, 0, pileSize(args.pile, view), view).filter((n) => n > first);
}

/** P6: some cards are turned over in place, then more, as one block; the first card face down is the old top card. */
export const cutDeeper = defineMove<CutDeeperArgs>({
  id: 'cut-deeper',
  procedures: ['P6'],
  hands: 'turn',
  title: 'cut deeper',
  phrases: [
    phrase('turn over {first:topcards} [of {pile:pile}] and, cutting deeper, {second:topcards}'),
    phrase('turn over {first:topcards} [of {pile:pile}] and, cutting deeper, turn over (more|again)', {
      second: { of: 'any' },
    }),
    phrase('cut deeper [(with|in) {pile:pile}]', { first: { of: 'any' }, second: { of: 'any' } }),
  ],
  defaults: { pile: 'packet' },
  help: 'A packet is turned over on top; then a deeper packet, the first one with it, is turned over. The first face-down card is the old top card.',
  caution: 'The second packet must be larger than the first, and the cards face one way before.',
  synonyms: ['cut deeper'],
  options(args, view) {
    const pile = pileName(args.pile, view);
    const size = pileSize(args.pile, view);
    const turn = (n: number) => [carry(pile, 0, n, pile, 0, { turned: 'side' })];
    if (view.phase === START) {
      const numbers = allowed(args.first, 0, size, view).filter((n) => n > 0);
      if (numbers.length === 0) return noNumber(args.first, args.pile, view);
      const left = numbers.filter((n) => deeper(args, n, view).length > 0);
      if (left.length === 0) return stuck('no-deeper-cut', { pile, size });
      // How many were turned is all that must be remembered for going deeper.
      return decided(left.map((n) => ({ key: n, actions: turn(n), next: n })));
    }
    return within(
      deeper(args, Number(view.phase), view).map((n) => ({ key: n, actions: turn(n), next: null })),
    );
  },
  say: ({ first, second }, [a, b]) =>
    [
      isOpen(first) ? [`turns ${cardCount(Number(a))}`] : [],
      isOpen(second) ? [`then turns ${cardCount(Number(b))}`] : [],
    ]
      .flat()
      .join(', '),
  examples: [
    {
      before: '1 2 3 4 5 6 7 8',
      sentence: 'Turn over the top 3 cards and, cutting deeper, the top 5 cards.',
      choices: [],
      after: '5^ 4^ 1 2 3 6 7 8',
    },
    { before: '1 2 3 4 5', sentence: 'Cut deeper.', choices: [1, 3], after: '3^ 2^ 1 4 5' },
  ],
});
