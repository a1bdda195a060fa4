import { mark, type Action } from '../../pictures/actions.ts';
import type { SlipInstead, SlipWay } from './slip.ts';

export const wrongTurn: SlipInstead = {
  id: 'wrong-turn',
  title: 'the wrong way of turning',
  help:
    'Cards are turned over the wrong way: end over end where it should be sideways or the other way about, or one by one where they ' +
    'should be turned together, which leaves them in their order.',
  when: 'instead',
  ways({ option: { actions } }) {
    const turns = actions.flatMap((action, i) =>
      action.do === 'carry' && action.turned !== undefined ? [i] : [],
    );
    return turns.flatMap((at, k) => waysAt(actions, at, turns.length === 1 ? '' : ` at turn ${k + 1}`));
  },
  examples: [
    {
      before: '1 2 3',
      sentence: 'Turn over the top 2 cards together.',
      choices: [],
      slip: ['end'],
      after: "2^' 1^' 3",
    },
    {
      before: '1 2 3',
      sentence: 'Turn over the top 2 cards together.',
      choices: [],
      slip: ['singly'],
      after: '1^ 2^ 3',
    },
    {
      before: '1 2',
      sentence: 'Turn the packet over end over end.',
      choices: [],
      slip: ['side'],
      after: '2^ 1^',
    },
  ],
};

function waysAt(actions: readonly Action[], at: number, which: string): SlipWay[] {
  const turn = actions[at];
  if (turn.do !== 'carry' || turn.turned === undefined) return [];
  const change = (...by: Action[]): Action[] => actions.flatMap((one, i) => (i === at ? by : [one]));
  const isSide = turn.turned === 'side';
  const ways: SlipWay[] = [
    {
      key: `${isSide ? 'end' : 'side'}${which}`,
      words: `${turn.count === 1 ? 'it is' : 'they are'} turned ${isSide ? 'end over end' : 'sideways'}${which}`,
      actions: change({ ...turn, turned: isSide ? 'end' : 'side' }),
    },
  ];
  if (turn.count > 1) {
    const { turned: _, ...laid } = turn;
    const over = mark(turn.to, turn.into, turn.count, 'up', 'toggle');
    const ends = isSide ? [] : [mark(turn.to, turn.into, turn.count, 'end', 'toggle')];
    ways.push({
      key: `singly${which}`,
      words: `they are turned one by one${which}`,
      actions: change(laid, over, ...ends),
    });
  }
  return ways;
}
