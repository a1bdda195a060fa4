import { range, type Form } from '../form.ts';

/** S9: as many of a class here as of the others there, whatever the order. */
export const balance: Form = {
  id: 'balance',
  trade: 'S9',
  piles: 2,
  name: () => 'balance of two piles',
  fits: ({ is, id }) => is === 'count' && id.startsWith('class '),
  variants: (n, _subject, m) => [
    {
      key: '',
      pattern: { of: 'count', plus: range(n + m), minus: [] },
      // Those of the class here less the others there: all of the class in both, less the cards there.
      say: ({ words }, value, [here, there]) => {
        const more = value - m;
        const others = `other cards in ${there}`;
        if (more === 0) return `there are as many ${words.plural} in ${here} as ${others}`;
        return more > 0
          ? `there are ${more} more ${words.plural} in ${here} than ${others}`
          : `there are ${-more} fewer ${words.plural} in ${here} than ${others}`;
      },
      ring: false,
    },
  ],
};
