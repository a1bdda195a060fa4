import { meantBy, redone, Sizes, type Meant } from './replay.ts';
import type { SlipInstead } from './slip.ts';

const BESIDE = 'cut-off part';

export const cutNotCompleted: SlipInstead = {
  id: 'cut-not-completed',
  title: 'a cut not completed',
  help: 'The upper part of a cut is not put beneath: it stays on the table beside the rest, or goes back where it was.',
  when: 'instead',
  ways({ view: { layout }, option }) {
    const meant = meantBy(layout, option.actions);
    const at = meant.findIndex(isCut);
    if (at < 0) return [];
    const again = (changed: readonly Meant[]) => redone(new Sizes(layout), changed);
    const beside = meant.map((one, i) =>
      i === at ? { ...one, beneath: false, action: { ...one.action, to: BESIDE, into: 0 } } : one,
    );
    return [
      { key: 'beside', words: 'the upper part stays beside the rest', actions: again(beside) },
      {
        key: 'back',
        words: 'the upper part goes back on top',
        actions: again(meant.filter((_, i) => i !== at)),
      },
    ];
  },
  examples: [
    {
      before: '1 2 3 4',
      sentence: 'Cut the packet at 1.',
      choices: [],
      slip: ['beside'],
      after: 'cut-off part: 1; packet: 2 3 4',
    },
    { before: '1 2 3 4', sentence: 'Cut the packet.', choices: [3], slip: ['back'], after: '1 2 3 4' },
  ],
};

/** The top of a pile, as a block, beneath the rest of it. */
function isCut({ action, all, beneath }: Meant): boolean {
  return (
    action.do === 'carry' &&
    action.from === action.to &&
    action.at === 0 &&
    action.count > 0 &&
    !all &&
    beneath &&
    action.turned === undefined &&
    action.reversed !== true
  );
}
