import type { PileRef } from '../phrases/values.ts';
import { phrase } from '../phrases/phrase.ts';
import { carry, type Action } from '../pictures/actions.ts';
import { decided, layOn, PILE } from './handling.ts';
import { defineMove, pileName, pileSize } from './move.ts';

type Half = 'odd places' | 'even places';
type AntiFaroArgs = { pile: PileRef; top: Half | 'either half' };

const EVERY = 'every (second|other|2nd) card [of {pile:pile}]';
const STRIP = `(strip out ${EVERY} and put them|(up-jog|jog) ${EVERY}, strip them out and put them)`;

/** P55: every second card stripped out, order kept, and one half laid on the other. */
export const antiFaro = defineMove<AntiFaroArgs>({
  id: 'anti-faro',
  procedures: ['P55'],
  hands: 'mix',
  title: 'anti-faro',
  phrases: [
    phrase(
      `(anti-faro|reverse faro) ${PILE} [, the {top=odd places~odd cards~odd half~odd-place cards|even places~even cards~even half~even-place cards|either half} on top]`,
    ),
    phrase(`${STRIP} on top`, { top: 'even places' }),
    phrase(`${STRIP} (beneath|below|underneath)`, { top: 'odd places' }),
    phrase('strip out every (second|other|2nd) card [of {pile:pile}] and put either half on top', {
      top: 'either half',
    }),
  ],
  defaults: { pile: 'packet', top: 'either half' },
  help: 'Every second card is jogged and stripped out, all orders kept. Odd places on top undoes an out-faro, even places on top an in-faro.',
  caution: 'Dealing into two piles separates the same cards but reverses both halves.',
  synonyms: ['strip out every second card'],
  readings: ({ top }) =>
    top === 'either half'
      ? [
          {
            word: 'anti-faro',
            taken: 'either half may go on top',
            other: 'Anti-faro the packet, odd places on top',
          },
        ]
      : [],
  options(args, view) {
    const pile = pileName(args.pile, view);
    const size = pileSize(args.pile, view);
    const tops: Half[] = args.top === 'either half' ? ['odd places', 'even places'] : [args.top];
    return decided(tops.map((top) => ({ key: top, actions: stripped(pile, size, top), next: null })));
  },
  say: ({ top }, [key]) => (top === 'either half' ? `puts the ${key} on top` : ''),
  examples: [
    {
      before: '1 2 3 4 5 6 7 8',
      sentence: 'Anti-faro the packet, odd places on top.',
      choices: [],
      after: '1 3 5 7 2 4 6 8',
    },
    {
      before: '1 2 3 4 5 6 7 8',
      sentence: 'Strip out every second card and put them on top.',
      choices: [],
      after: '2 4 6 8 1 3 5 7',
    },
    { before: '1 2 3', sentence: 'Anti-faro the packet.', choices: ['even places'], after: '2 1 3' },
  ],
});

function stripped(pile: string, size: number, top: Half): Action[] {
  const actions: Action[] = [];
  for (let p = 0; p < size; p++)
    actions.push(carry(pile, 0, 1, p % 2 === 0 ? '~odd' : '~even', Math.floor(p / 2)));
  const odd = Math.ceil(size / 2);
  const [upper, lower] = top === 'odd places' ? ['~odd', '~even'] : ['~even', '~odd'];
  const above = top === 'odd places' ? odd : size - odd;
  return [...actions, ...layOn(lower, size - above, pile), ...layOn(upper, above, pile)];
}
