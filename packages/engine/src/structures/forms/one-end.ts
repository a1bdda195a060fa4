import { range, type Form, type Pair } from '../form.ts';

/** S25: one card alone points its own way, and it stays that card. */
export const oneEnd: Form = {
  id: 'one-end',
  trade: 'S25',
  piles: 1,
  whole: true,
  name: () => 'one end',
  fits: ({ is }) => is === 'one off',
  variants: (n) =>
    n < 2
      ? []
      : [
          {
            key: '',
            pattern: { of: 'pairs', pairs: range(n - 1).map((p): Pair => [p, p + 1]), relation: 'alike' },
            say: ({ words }) => `${words.alike} points one way and all other cards the other`,
            ring: false,
          },
        ],
};
