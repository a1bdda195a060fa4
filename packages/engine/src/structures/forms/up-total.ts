import { range, type Form } from '../form.ts';

/** S15: what the face-up cards come to, whichever they are. */
export const upTotal: Form = {
  id: 'up-total',
  trade: 'S15',
  piles: 1,
  name: () => 'fixed total',
  fits: ({ is }) => is === 'total',
  variants: (n) =>
    n === 0
      ? []
      : [
          {
            key: '',
            pattern: { of: 'total', places: range(n) },
            say: ({ words }, value) => `${words.plural} come to ${value} in ${words.noun}`,
            ring: false,
          },
        ],
};
