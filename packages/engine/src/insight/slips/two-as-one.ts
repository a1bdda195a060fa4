import { printOrdinal } from '../../phrases/tokens.ts';
import { dealingIn, dealt } from './dealing.ts';
import type { SlipInstead } from './slip.ts';

export const twoAsOne: SlipInstead = {
  id: 'two-as-one',
  title: 'two dealt as one',
  help: 'While cards are dealt one by one, two stick together and are dealt and counted as one.',
  when: 'instead',
  ways({ view: { layout }, option }) {
    const dealing = dealingIn(layout, option.actions);
    if (dealing === null || dealing.cards.length < 2) return [];
    const plain = JSON.stringify(dealt(layout, dealing, dealing.cards));
    return dealing.cards.flatMap((_, i) => {
      const actions = dealt(layout, dealing, dealing.cards, i);
      // At the last card there may be none to stick to it.
      if (JSON.stringify(actions) === plain) return [];
      return [
        { key: i + 1, words: `the ${printOrdinal(i + 1)} card dealt takes the next one with it`, actions },
      ];
    });
  },
  examples: [
    {
      before: '1 2 3 4 5',
      sentence: 'Deal the packet into a pile.',
      choices: [],
      slip: [2],
      after: '5 4 2 3 1',
    },
    {
      before: '1 2 3 4 5',
      sentence: 'Deal 3 cards to the table.',
      choices: [],
      slip: [1],
      after: 'packet: 5; table: 4 3 1 2',
    },
    {
      before: '1 2 3 4 5 6',
      sentence: 'Deal the packet into 2 piles.',
      choices: [],
      slip: [3],
      after: 'pile 1: 6 3 4 1; pile 2: 5 2',
    },
    {
      before: '1 2 3 4',
      sentence: 'Deal the packet into a pile, turning every second card.',
      choices: [],
      slip: [2],
      after: '4 3^ 2^ 1',
    },
    {
      before: '1 2 3 4 5',
      sentence: 'Deal the packet down-under until one card is left.',
      choices: [],
      slip: [1],
      after: 'packet: 5; table: 3 4 1 2',
    },
  ],
};
