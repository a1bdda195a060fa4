import { bothRelations, isClass, range, type Form, type Pair } from '../form.ts';

/** S2: cards equally far from the two ends belong together; the stay-stack. */
export const mirrored: Form = {
  id: 'mirrored',
  trade: 'S2',
  piles: 1,
  name: () => 'mirrored',
  fits: isClass,
  variants: (n, subject) =>
    n < 4
      ? []
      : bothRelations(
          range(Math.floor(n / 2)).map((p): Pair => [p, n - 1 - p]),
          subject,
          'mirror pairs, counted from both ends,',
        ),
};
