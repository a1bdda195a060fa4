import { carry } from '../../pictures/actions.ts';
import { sizeOf } from '../../pictures/layout.ts';
import { printPile } from '../../phrases/blanks/pile.ts';
import { nth, places } from './places-in.ts';
import type { SlipAfter } from './slip.ts';

/** A card on the floor remembers which pile it fell from: with many piles on the table it goes back to that one. */
const FALLEN = '~from ';

export const cardDropped: SlipAfter = {
  id: 'card-dropped',
  title: 'a card dropped and put back elsewhere',
  help: 'One card of those just handled falls and is put back the same way up, but at some other place of its pile.',
  when: 'after',
  decisions: [
    (handled, layout) =>
      handled.flatMap((pile) =>
        places(pile, sizeOf(layout, pile)).map(({ key, words, at }) => ({
          key,
          words: `${words} is dropped`,
          actions: [carry(pile, at, 1, `${FALLEN}${pile}`, 0)],
        })),
      ),
    (_handled, { names, sizes }) => {
      const fallen = names.find((name) => name.startsWith(FALLEN));
      if (fallen === undefined) return [];
      const pile = fallen.slice(FALLEN.length);
      const size = names.includes(pile) ? sizes[names.indexOf(pile)] : 0;
      return Array.from({ length: size + 1 }, (_, at) => ({
        key: at + 1,
        words: `put back as the ${nth(at, size + 1)} card of ${printPile(pile)}`,
        actions: [carry(fallen, 0, 1, pile, at)],
      }));
    },
  ],
  examples: [
    {
      before: '1 2 3 4',
      sentence: 'Cut the packet at 1.',
      choices: [],
      slip: ['packet 1', 3],
      after: '3 4 2 1',
    },
    {
      before: '1 2 3 4',
      sentence: 'Deal the packet into 2 piles.',
      choices: [],
      slip: ['pile 1 2', 1],
      after: 'pile 1: 1 3; pile 2: 4 2',
    },
  ],
};
