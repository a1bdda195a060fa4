import { bothRelations, isClass, range, type Form, type Pair } from '../form.ts';

/** S4: cards half the packet apart belong together. */
export const halfOffset: Form = {
  id: 'half-offset',
  trade: 'S4',
  piles: 1,
  name: () => 'half-offset',
  fits: isClass,
  variants: (n, subject) =>
    n < 4 || n % 2 === 1
      ? []
      : bothRelations(
          range(n / 2).map((p): Pair => [p, p + n / 2]),
          subject,
          'cards half the packet apart',
        ),
};
