import { bothRelations, isClass, range, type Form, type Pair } from '../form.ts';

/** Each half of one class, as after dealing an alternating packet into two heaps and gathering them. */
export const separated: Form = {
  id: 'separated',
  trade: '',
  piles: 1,
  name: () => 'separated',
  fits: isClass,
  variants(n, subject) {
    if (n < 4 || n % 2 === 1) return [];
    const half = n / 2;
    const within = range(half - 1).flatMap((p): Pair[] => [
      [p, p + 1],
      [half + p, half + p + 1],
    ]);
    return bothRelations(within, subject, 'the cards within each half').filter(
      ({ pattern }) => pattern.of === 'pairs' && pattern.relation === 'alike',
    );
  },
};
