import { bothRelations, isClass, range, type Form, type Pair } from '../form.ts';

/** S3: places whose sum, counted round, is the same belong together; what a cut makes of a mirrored packet. */
export const cyclicMirror: Form = {
  id: 'cyclic-mirror',
  trade: 'S3',
  piles: 1,
  name: () => 'mirrored going round',
  fits: isClass,
  variants: (n, subject) =>
    n < 6
      ? []
      : range(n).flatMap((sum) => {
          // Sum n - 1 of places counted from 0 is the mirror itself.
          if (sum === n - 1) return [];
          const pairs = range(n).flatMap((p): Pair[] => {
            const q = (((sum - p) % n) + n) % n;
            return p < q ? [[p, q]] : [];
          });
          const rest = ((sum + 2 - 1) % n) + 1;
          const where = `cards whose places add up to ${rest}, counted round ${n},`;
          return bothRelations(pairs, subject, where, true, `${sum} `);
        }),
};
