import { printPile } from '../../phrases/blanks/pile.ts';
import type { Carry } from '../../pictures/actions.ts';
import { meantBy, redone, Sizes } from './replay.ts';
import type { SlipInstead } from './slip.ts';

export const wrongHeapOnTop: SlipInstead = {
  id: 'wrong-heap-on-top',
  title: 'the wrong heap on top',
  help: 'Two heaps are put together the other way about: the one that should be uppermost goes beneath.',
  when: 'instead',
  ways({ move, view: { layout }, option }) {
    if (move.hands !== 'gather' && move.hands !== 'cut') return [];
    const meant = meantBy(layout, option.actions);
    const sizes = new Sizes(layout);
    return meant.flatMap((one, i) => {
      const { action, all, beneath } = one;
      const isLaid =
        action.do === 'carry' &&
        all &&
        action.from !== action.to &&
        sizes.at(action.to) > 0 &&
        isWhole(action);
      sizes.after(action);
      if (!isLaid || action.do !== 'carry') return [];
      const changed = meant.map((other, k) =>
        k === i ? { ...other, beneath: !beneath, action: { ...action, into: 0 } } : other,
      );
      const [laid, on] = [heap(action.from), heap(action.to)];
      return [
        {
          key: i + 1,
          words: `${laid} goes ${beneath ? 'on' : 'beneath'} ${on}`,
          actions: redone(new Sizes(layout), changed),
        },
      ];
    });
  },
  examples: [
    {
      before: 'packet: 4 5; table: 3 2 1',
      sentence: 'Put the table on the packet.',
      choices: [],
      slip: [1],
      after: '4 5 3 2 1',
    },
    {
      before: 'pile 1: 1 2; pile 2: 3 4; pile 3: 5 6',
      sentence: 'Gather the piles left on right.',
      choices: [],
      slip: [2],
      after: '5 6 1 2 3 4',
    },
  ],
};

function isWhole({ at, turned, reversed }: Carry): boolean {
  return at === 0 && turned === undefined && reversed !== true;
}

function heap(pile: string): string {
  return pile.startsWith('~') ? 'what is gathered' : printPile(pile);
}
