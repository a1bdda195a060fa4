import type { PileRef } from '../phrases/values.ts';
import { phrase } from '../phrases/phrase.ts';
import { carry } from '../pictures/actions.ts';
import { defineMove, pileName, pileSize } from './move.ts';

type RotatePacketArgs = { pile: PileRef };

/** P20: a pile turned round flat on the table by half a turn: the ends of its cards are exchanged, nothing else. */
export const rotatePacket = defineMove<RotatePacketArgs>({
  id: 'rotate-packet',
  procedures: ['P20'],
  hands: 'turn',
  title: 'rotate the packet',
  phrases: [
    phrase('rotate {pile:pile} [on the table] [(half a turn|half way round|end for end|180 degrees)]'),
    phrase('turn {pile:pile} (round|around) [on the table]'),
    phrase('give {pile:pile} (half a turn|a half turn) on the table'),
  ],
  defaults: { pile: 'packet' },
  help: 'The pile is turned round flat on the table by half a turn. Order and faces stay; every card points the other way.',
  caution: 'This is not turning over. Only cards whose two ends differ show it.',
  synonyms: ['half turn', 'end for end'],
  options(args, view) {
    const pile = pileName(args.pile, view);
    const size = pileSize(args.pile, view);
    return [
      {
        key: 'round',
        actions: size === 0 ? [] : [carry(pile, 0, size, pile, 0, { spun: true })],
        next: null,
        off: 0,
      },
    ];
  },
  say: () => '',
  examples: [
    {
      before: '1 2 3 4 5 6 7 8',
      sentence: 'Rotate the packet on the table.',
      choices: [],
      after: "1' 2' 3' 4' 5' 6' 7' 8'",
    },
    {
      before: "pile 1: 1' 2^; pile 2: 3",
      sentence: 'Rotate pile 1 end for end.',
      choices: [],
      after: "pile 1: 1 2^'; pile 2: 3",
    },
  ],
});
