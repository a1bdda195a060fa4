import { range, type Form, type Pair } from '../form.ts';

/** S13: from card to card the values go up by the same number, counted round. */
export const cyclicStack: Form = {
  id: 'cyclic-stack',
  trade: 'S13',
  piles: 1,
  name: () => 'cyclic stack',
  fits: ({ is }) => is === 'steps',
  variants: (n, { p }) =>
    n < 3
      ? []
      : [
          {
            key: '',
            pattern: { of: 'same step', pairs: range(n - 1).map((i): Pair => [i, i + 1]) },
            say: ({ words }, value) =>
              `${words.plural} go up by ${value} each time, counting round after ${p}`,
            ring: n % p === 0,
          },
        ],
};
