import { bothRelations, isClass, range, type Form, type Pair } from '../form.ts';

/** S5: the two cards of each pair from the top belong together. */
export const pairs: Form = {
  id: 'pairs',
  trade: 'S5',
  piles: 1,
  name: () => 'in pairs',
  fits: isClass,
  variants: (n, subject) =>
    n < 4
      ? []
      : bothRelations(
          range(Math.floor(n / 2)).map((j): Pair => [2 * j, 2 * j + 1]),
          subject,
          'the two cards of each pair from the top',
        ),
};
