import { range, type Form } from '../form.ts';

/** Totals that are certain whatever the order: so many cards face up, so many of a class in a pile. */
export const counted: Form = {
  id: 'counted',
  trade: 'S9',
  piles: 1,
  name: () => 'counted',
  fits: ({ is }) => is === 'count',
  variants: (n) =>
    n === 0
      ? []
      : [
          {
            key: '',
            pattern: { of: 'count', plus: range(n), minus: [] },
            say: ({ words }, value) =>
              value === 1 ? `there is exactly 1 ${words.noun}` : `there are exactly ${value} ${words.plural}`,
            ring: false,
          },
        ],
};
