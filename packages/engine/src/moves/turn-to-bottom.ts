import type { Block, PileRef } from '../phrases/values.ts';
import { phrase } from '../phrases/phrase.ts';
import { carry } from '../pictures/actions.ts';
import { cardCount } from './handling.ts';
import { defineMove, pileName, pileSize } from './move.ts';
import { chooseNumber, isOpen, turned, turnReading, type How } from './open.ts';

type TurnToBottomArgs = { pile: PileRef; block: Block; how: How };

const TO_BOTTOM =
  '(and|then) (put|place) (it|them) (on the bottom|at the bottom|to the bottom|beneath|underneath) ' +
  '[(of the packet|the others|the rest)]';

/** P9, P13: cards from the top turned over together and put on the bottom. */
export const turnToBottom = defineMove<TurnToBottomArgs>({
  id: 'turn-to-bottom',
  procedures: ['P9', 'P13'],
  hands: 'turn',
  title: 'turn over and put on the bottom',
  phrases: [
    phrase(
      `turn over {block:block} [of {pile:pile}] [(together|as a block|as one)] [{how=sideways|end over end}] ${TO_BOTTOM}`,
    ),
    phrase(
      `turn {block:block} [of {pile:pile}] over [(together|as a block|as one)] [{how=sideways|end over end}] ${TO_BOTTOM}`,
    ),
    phrase(`(flip|flip over) {block:block} [of {pile:pile}] [{how=sideways|end over end}] ${TO_BOTTOM}`),
  ],
  defaults: { pile: 'packet', how: 'sideways' },
  help: 'Cards are turned over together and go to the bottom as they are then: their order among themselves reversed.',
  caution: 'Turning changes how they lie, the transfer only where the ring begins.',
  synonyms: ['turn over and put beneath'],
  readings: ({ how }) => turnReading(how),
  options(args, view) {
    const pile = pileName(args.pile, view);
    const { end, cards } = args.block;
    return chooseNumber(cards, args.pile, view, (n) => {
      const size = pileSize(args.pile, view);
      const at = end === 'top' ? 0 : size - n;
      return { actions: n === 0 ? [] : [carry(pile, at, n, pile, size - n, turned(args.how))], next: null };
    });
  },
  say: ({ block }, [n]) => {
    if (!isOpen(block.cards)) return '';
    return n === 0 ? 'turns nothing' : `turns ${cardCount(Number(n))}`;
  },
  examples: [
    {
      before: '1 2 3 4',
      sentence: 'Turn over the top card and put it on the bottom.',
      choices: [],
      after: '2 3 4 1^',
    },
    {
      before: '1 2^ 3 4',
      sentence: 'Turn the top 2 cards over as one and put them beneath.',
      choices: [],
      after: '3 4 2 1^',
    },
    {
      before: '1 2',
      sentence: 'Turn over the top card end over end and put it on the bottom.',
      choices: [],
      after: "2 1^'",
    },
  ],
});
