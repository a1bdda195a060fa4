import { range, type Form } from '../form.ts';

/** S10: as many at the odd places as at the even ones. */
export const oddAsEven: Form = {
  id: 'odd-as-even',
  trade: 'S10',
  piles: 1,
  name: () => 'odd places as even',
  fits: ({ is, id }) => is === 'count' && id.startsWith('count '),
  variants: (n) =>
    n < 4
      ? []
      : [
          {
            key: '',
            pattern: {
              of: 'count',
              plus: range(n).filter((p) => p % 2 === 0),
              minus: range(n).filter((p) => p % 2 === 1),
            },
            say: ({ words }, value) => {
              if (value === 0)
                return `there are as many ${words.plural} at the odd places as at the even ones`;
              const [here, there] = value > 0 ? ['odd', 'even'] : ['even', 'odd'];
              const more = Math.abs(value);
              return `there are ${more} more ${words.plural} at the ${here} places than at the ${there} ones`;
            },
            ring: false,
          },
        ],
};
