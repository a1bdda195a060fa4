import type { Amount, PileRef } from '../phrases/values.ts';
import { phrase } from '../phrases/phrase.ts';
import { carry } from '../pictures/actions.ts';
import { sizeOf } from '../pictures/layout.ts';
import { cardCount, decided, within } from './handling.ts';
import { allowed, defineMove, pileName, pileSize, stuck, type View } from './move.ts';
import { isOpen, noNumber, numbersOf } from './open.ts';

/** How many cards come to lie above what is put in; in the middle there is at least one above and one below. */
export type Gap = 'anywhere' | 'in the middle' | Amount;

export function gapsOf(gap: Gap, size: number, view: View): number[] {
  if (gap === 'in the middle') return Array.from({ length: Math.max(size - 1, 0) }, (_, i) => i + 1);
  return allowed(gap === 'anywhere' ? { of: 'any' } : gap, 0, size, view);
}

export function gapIsOpen(gap: Gap): boolean {
  return typeof gap === 'string' || isOpen(gap);
}

type BuryArgs = { pile: PileRef; count: Amount; gap: Gap };

const TAKEN = '~taken';
const PUT = 'put';

/** P10: the top card or a block of the top moved to somewhere deeper. */
export const bury = defineMove<BuryArgs>({
  id: 'bury',
  procedures: ['P10', 'P62'],
  hands: 'cut',
  title: 'bury the top cards',
  phrases: [
    phrase(
      '(bury|lose) {count:topcards} [of {pile:pile}] ' +
        '({gap=in the middle~somewhere in the middle|anywhere}|(beneath|under) {gap:cards})',
    ),
    phrase('(bury|lose) {count:topcards} [of {pile:pile}]', { gap: 'in the middle' }),
    phrase(
      '(put|place|insert|move|push) {count:topcards} [of {pile:pile}] {gap=in the middle~into the middle~somewhere in the middle~somewhere into the middle~back in the middle~back into the middle|anywhere~back anywhere}',
    ),
  ],
  defaults: { pile: 'packet' },
  help: 'The top card or cards are put into the packet at some depth, their order kept.',
  caution:
    'In the middle means at least one card above and one below. Anywhere may be the very top or the very bottom.',
  synonyms: ['lose in the middle'],
  outermost: { least: 'back on top', most: 'right to the bottom' },
  options(args, view) {
    const pile = pileName(args.pile, view);
    const size = pileSize(args.pile, view);
    if (view.phase === PUT) {
      const block = sizeOf(view.layout, TAKEN);
      const ways = gapsOf(args.gap, size, view).map((gap) => ({
        key: gap,
        actions: block === 0 ? [] : [carry(TAKEN, 0, block, pile, gap)],
        next: null,
      }));
      return within(ways);
    }
    const numbers = numbersOf(args.count, args.pile, view);
    if (numbers.length === 0) return noNumber(args.count, args.pile, view);
    const left = numbers.filter((n) => gapsOf(args.gap, size - n, view).length > 0);
    if (left.length === 0) return stuck('no-place-for-it', { pile, size });
    return decided(
      left.map((n) => ({ key: n, actions: n === 0 ? [] : [carry(pile, 0, n, TAKEN, 0)], next: PUT })),
    );
  },
  say: ({ count, gap }, [n, above]) =>
    [
      isOpen(count) ? [n === 0 ? 'takes nothing' : `takes ${cardCount(Number(n))}`] : [],
      gapIsOpen(gap) ? [above === 0 ? 'leaves it on top' : `puts it under ${cardCount(Number(above))}`] : [],
    ]
      .flat()
      .join(', '),
  examples: [
    { before: '1 2 3 4 5', sentence: 'Bury the top card in the middle.', choices: [3], after: '2 3 4 1 5' },
    { before: '1 2 3 4', sentence: 'Bury the top 2 cards anywhere.', choices: [2], after: '3 4 1 2' },
    { before: '1 2 3 4', sentence: 'Bury the top card under 2 cards.', choices: [], after: '2 3 1 4' },
  ],
});
