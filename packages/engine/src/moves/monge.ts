import type { PileRef } from '../phrases/values.ts';
import { phrase } from '../phrases/phrase.ts';
import { carry, type Action } from '../pictures/actions.ts';
import { layOn, PILE } from './handling.ts';
import { defineMove, pileName, pileSize } from './move.ts';

type MongeArgs = { pile: PileRef; second: 'on top' | 'beneath' };

const PASS = `(pass|take) ${PILE} into the other hand [card by card|one by one], [alternately]`;
const SECOND = '[, the second (card|) {second=on top~over|beneath~under~below}]';

/** P35: cards passed one by one into the other hand, alternately over and under. */
export const monge = defineMove<MongeArgs>({
  id: 'monge',
  procedures: ['P35'],
  hands: 'mix',
  title: 'Monge shuffle',
  phrases: [
    phrase(`(Monge-shuffle|Monge) ${PILE} ${SECOND}`),
    phrase(`give ${PILE} a Monge [shuffle] ${SECOND}`),
    phrase(`(over-and-under|over-under) shuffle ${PILE}`, { second: 'on top' }),
    phrase(`${PASS} over and under`, { second: 'on top' }),
    phrase(`${PASS} under and over`, { second: 'beneath' }),
  ],
  defaults: { pile: 'packet', second: 'on top' },
  help: 'Cards go one by one into the other hand: the second on the first, the third under both, the fourth on top, and so on; or the other way about.',
  caution:
    'Whether the second card goes over or under makes two different shuffles. Milking undoes the one with the second beneath, for even numbers.',
  synonyms: ['over and under'],
  readings: ({ second }) => [
    {
      word: 'Monge',
      taken: `the second card goes ${second}`,
      other: `Monge-shuffle the packet, the second card ${second === 'on top' ? 'beneath' : 'on top'}`,
    },
  ],
  options(args, view) {
    const pile = pileName(args.pile, view);
    const size = pileSize(args.pile, view);
    const actions: Action[] = [];
    for (let p = 0; p < size; p++) {
      const over = args.second === 'on top' ? p % 2 === 1 : p % 2 === 0;
      actions.push(carry(pile, 0, 1, '~passed', over ? 0 : p));
    }
    return [{ key: 'monge', actions: [...actions, ...layOn('~passed', size, pile)], next: null, off: 0 }];
  },
  say: () => '',
  examples: [
    {
      before: '1 2 3 4 5 6 7 8',
      sentence: 'Monge-shuffle the packet.',
      choices: [],
      after: '8 6 4 2 1 3 5 7',
    },
    {
      before: '1 2 3 4 5 6 7 8',
      sentence: 'Monge-shuffle the packet, the second card beneath.',
      choices: [],
      after: '7 5 3 1 2 4 6 8',
    },
  ],
});
