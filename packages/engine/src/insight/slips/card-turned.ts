import { carry } from '../../pictures/actions.ts';
import { sizeOf } from '../../pictures/layout.ts';
import { places } from './places-in.ts';
import type { SlipAfter } from './slip.ts';

export const cardTurned: SlipAfter = {
  id: 'card-turned',
  title: 'a card turned',
  help: 'One card of those just handled comes to lie the other way up; its place is still right.',
  when: 'after',
  decisions: [
    (handled, layout) =>
      handled.flatMap((pile) =>
        places(pile, sizeOf(layout, pile)).map(({ key, words, at }) => ({
          key,
          words: `${words} is turned over`,
          actions: [carry(pile, at, 1, pile, at, { turned: 'side' })],
        })),
      ),
  ],
  examples: [
    {
      before: '1 2 3 4',
      sentence: 'Cut the packet at 1.',
      choices: [],
      slip: ['packet 2'],
      after: '2 3^ 4 1',
    },
    {
      before: '1 2^ 3 4',
      sentence: 'Deal the packet into 2 piles.',
      choices: [],
      slip: ['pile 2 2'],
      after: 'pile 1: 3 1; pile 2: 4 2',
    },
  ],
};
