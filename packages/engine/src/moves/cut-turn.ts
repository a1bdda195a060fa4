import type { Amount, PileRef } from '../phrases/values.ts';
import { phrase } from '../phrases/phrase.ts';
import { carry } from '../pictures/actions.ts';
import { cardCount, decided, within } from './handling.ts';
import { allowed, defineMove, pileName, pileSize } from './move.ts';
import { isOpen, noNumber, numbersOf, turned, turnReading, type How } from './open.ts';

type CutTurnArgs = { pile: PileRef; at: Amount; count: Amount; how: How };

const TURN = 'turn' as const;

/** P5: a complete cut, then the top cards are turned over as a block; with two cards, cut and turn over two (CATO). */
export const cutTurn = defineMove<CutTurnArgs>({
  id: 'cut-turn',
  procedures: ['P5'],
  hands: 'turn',
  title: 'cut and turn over',
  phrases: [
    phrase(
      'cut {pile:pile} [at {at:amount}] and turn over {count:topcards} [(together|as a block|as one)] [{how=sideways|end over end}]',
    ),
    phrase(
      'cut [at {at:amount}] and turn over {count:topcards} [(together|as a block|as one)] [{how=sideways|end over end}]',
    ),
    phrase('cut [{pile:pile}] and turn over {count:amount} [cards] [(together|as a block|as one)]'),
    phrase('cato [{pile:pile}]', { count: { of: 'exactly', n: 2 } }),
  ],
  defaults: { pile: 'packet', at: { of: 'any' }, how: 'sideways' },
  help: 'The packet is given a complete cut, then the top cards are turned over together as one block.',
  caution:
    'An even block in an even packet keeps the tie between place, face and class; an odd one breaks it.',
  synonyms: ['CATO', 'cut and turn over two'],
  readings: ({ how }) => turnReading(how),
  options(args, view) {
    const pile = pileName(args.pile, view);
    const size = pileSize(args.pile, view);
    const counts = numbersOf(args.count, args.pile, view);
    if (counts.length === 0) return noNumber(args.count, args.pile, view);
    if (view.phase === TURN) {
      const ways = counts.map((n) => ({
        key: n,
        actions: n === 0 ? [] : [carry(pile, 0, n, pile, 0, turned(args.how))],
        next: null,
      }));
      return within(ways);
    }
    const places = allowed(args.at, 0, size, view);
    // Cutting all the cards is cutting none.
    const distinct = places.filter((c) => c < size || !places.includes(0));
    if (distinct.length === 0) return noNumber(args.at, args.pile, view);
    const cutAt = (c: number) => (c === 0 || c === size ? [] : [carry(pile, 0, c, pile, size - c)]);
    return decided(distinct.map((c) => ({ key: c, actions: cutAt(c), next: TURN })));
  },
  say: ({ at, count }, [c, n]) =>
    [
      isOpen(at) ? [c === 0 ? 'cuts nothing' : `cuts ${c}`] : [],
      isOpen(count) ? [n === 0 ? 'turns nothing' : `turns ${cardCount(Number(n))}`] : [],
    ]
      .flat()
      .join(', '),
  examples: [
    {
      before: '1 2 3 4 5 6 7 8',
      sentence: 'Cut the packet at 5 and turn over the top 2.',
      choices: [],
      after: '7^ 6^ 8 1 2 3 4 5',
    },
    { before: '1 2 3 4', sentence: 'Cut and turn over two.', choices: [1], after: '3^ 2^ 4 1' },
    {
      before: '1 2 3 4',
      sentence: 'Cut the packet and turn over an even number of cards from the top.',
      choices: [0, 4],
      after: '4^ 3^ 2^ 1^',
    },
  ],
});
