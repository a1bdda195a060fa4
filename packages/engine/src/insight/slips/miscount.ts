import { isStuck } from '../../moves/move.ts';
import type { ArgValue } from '../../phrases/values.ts';
import type { Action, Carry } from '../../pictures/actions.ts';
import type { Layout } from '../../pictures/layout.ts';
import { dealingIn, dealt } from './dealing.ts';
import { meantBy, redone, Sizes } from './replay.ts';
import type { Doing, SlipInstead, SlipWay } from './slip.ts';

export const miscount: SlipInstead = {
  id: 'miscount',
  title: 'a miscount by one',
  help: 'Where a number of cards is counted off, there is one more or one fewer than was meant.',
  when: 'instead',
  ways(doing) {
    if (!countsCards(doing)) return [];
    const { layout } = doing.view;
    const { actions } = doing.option;
    const ways = countedSingly(layout, actions) ?? countedTogether(layout, actions);
    const choices = namesNumber(doing) ? new Set<string>() : actionsOf(doing);
    return ways.filter((way) => !choices.has(JSON.stringify(way.actions)));
  },
  examples: [
    {
      before: '1 2 3 4 5',
      sentence: 'Deal 3 cards to the table.',
      choices: [],
      slip: ['one more'],
      after: 'packet: 5; table: 4 3 2 1',
    },
    {
      before: '1 2 3 4 5',
      sentence: 'Cut the packet at 3.',
      choices: [],
      slip: ['one fewer'],
      after: '3 4 5 1 2',
    },
    {
      before: '1 2 3 4',
      sentence: 'Turn over the top 2 cards together.',
      choices: [],
      slip: ['one more'],
      after: '3^ 2^ 1^ 4',
    },
    {
      before: '1 2 3 4 5 6',
      sentence: 'Deal 1 to 3 cards to the table.',
      choices: [3],
      slip: ['one more'],
      after: 'packet: 5 6; table: 4 3 2 1',
    },
    {
      before: '1 2 3 4 5 6 7',
      sentence: 'Deal 2 hands of 3 cards.',
      choices: [],
      slip: ['one fewer'],
      after: 'packet: 6 7; hand 1: 5 3 1; hand 2: 4 2',
    },
  ],
};

/** Moves that count cards by letters or values. */
const BY_LETTERS: ReadonlySet<string> = new Set([
  'deal-letters',
  'transfer-letters',
  'spell-card',
  'spell-name',
  'deal-value',
]);

function countsCards({ step, move }: Doing): boolean {
  return BY_LETTERS.has(move.id) || Object.values(step.args).some(states) || namesNumber({ step, move });
}

/** What was really counted is not the number that is named. */
function namesNumber({ step, move }: Pick<Doing, 'step' | 'move'>): boolean {
  return (move.brings?.(step.args).numbers ?? []).length > 0;
}

/** Everything that may be chosen: one more or fewer may be just another choice. */
function actionsOf({ step, move, view }: Doing): ReadonlySet<string> {
  const options = move.options(step.args, view);
  return new Set(isStuck(options) ? [] : options.map(({ actions }) => JSON.stringify(actions)));
}

/** Whether a blank says or bounds a number of cards. */
function states(value: ArgValue): boolean {
  if (typeof value === 'number') return true;
  if (typeof value !== 'object' || Array.isArray(value)) return false;
  if ('var' in value) return true;
  if ('cards' in value) return states(value.cards);
  return 'of' in value && value.of !== 'any';
}

function countedSingly(layout: Layout, actions: readonly Action[]): SlipWay[] | null {
  const dealing = dealingIn(layout, actions);
  if (dealing === null) return null;
  // What goes on to the end, or until so many are left, is not counted.
  if (dealing.exhausts || dealing.floor > 0) return [];
  const { cards } = dealing;
  // Round and round: the next card would go where the round begins again.
  const round = new Set(cards.map(({ to }) => to)).size;
  const next = cards[cards.length - round];
  return [
    {
      key: 'one fewer',
      words: 'one card fewer is counted',
      actions: dealt(layout, dealing, cards.slice(0, -1)),
    },
    { key: 'one more', words: 'one card more is counted', actions: dealt(layout, dealing, [...cards, next]) },
  ];
}

function countedTogether(layout: Layout, actions: readonly Action[]): SlipWay[] {
  const meant = meantBy(layout, actions);
  const counted = meant.flatMap(({ action, all }, i) => (action.do === 'carry' && !all ? [i] : []));
  return counted.flatMap((at, k) =>
    [-1, 1].flatMap((by): SlipWay[] => {
      const action = meant[at].action as Carry;
      const size = new Sizes(layout);
      redone(size, meant.slice(0, at));
      const count = action.count + by;
      if (count > size.at(action.from)) return [];
      const changed = meant.map((one, i) => (i === at ? { ...one, action: { ...action, count } } : one));
      const how = by < 0 ? 'one fewer' : 'one more';
      const times = counted.length === 1 ? '' : ` at count ${k + 1}`;
      const words = `one card ${by < 0 ? 'fewer' : 'more'} is taken${times}`;
      return [{ key: `${how}${times}`, words, actions: redone(new Sizes(layout), changed) }];
    }),
  );
}
