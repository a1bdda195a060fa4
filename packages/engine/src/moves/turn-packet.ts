import type { PileRef } from '../phrases/values.ts';
import { phrase } from '../phrases/phrase.ts';
import { carry } from '../pictures/actions.ts';
import { defineMove, pileName, pileSize } from './move.ts';
import { turned, turnReading, type How } from './open.ts';

type TurnPacketArgs = { pile: PileRef; how: How };

/** P12, P19: a whole pile turned over: its order goes round and every card shows its other side. */
export const turnPacket = defineMove<TurnPacketArgs>({
  id: 'turn-packet',
  procedures: ['P12', 'P19'],
  hands: 'turn',
  title: 'turn the packet over',
  phrases: [
    phrase('turn {pile:pile} over [{how=sideways|end over end}]'),
    phrase('turn [whole] {pile:pile} {how=sideways|end over end~end for end}'),
    phrase('(turn over|flip|flip over) [whole] {pile:pile} [{how=sideways|end over end}]'),
    phrase('(turn|flip) [whole] {pile:pile} over [{how=sideways|end over end}]'),
  ],
  defaults: { pile: 'packet', how: 'sideways' },
  help: 'The whole pile is turned over: the bottom card becomes the top card and every card shows its other side.',
  caution: 'Sideways keeps the ends of the cards, end over end exchanges them.',
  synonyms: ['flip'],
  readings: ({ how }) => turnReading(how),
  options(args, view) {
    const pile = pileName(args.pile, view);
    const size = pileSize(args.pile, view);
    const actions = size === 0 ? [] : [carry(pile, 0, size, pile, 0, turned(args.how))];
    return [{ key: 'over', actions, next: null, off: 0 }];
  },
  say: () => '',
  examples: [
    {
      before: '1 2 3 4 5 6 7 8',
      sentence: 'Turn the packet over sideways.',
      choices: [],
      after: '8^ 7^ 6^ 5^ 4^ 3^ 2^ 1^',
    },
    {
      before: '1 2 3 4 5 6 7 8',
      sentence: 'Turn the packet over end over end.',
      choices: [],
      after: "8^' 7^' 6^' 5^' 4^' 3^' 2^' 1^'",
    },
    {
      before: 'n = 2; pile 1: 1; pile 2: 2^ 3',
      sentence: 'Turn over pile N.',
      choices: [],
      after: 'pile 1: 1; pile 2: 3^ 2',
    },
  ],
});
