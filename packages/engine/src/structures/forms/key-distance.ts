import { range, type Form, type Pair } from '../form.ts';

/** S12: a card lies so many places below the key card, going round; every cut keeps it. */
export const keyDistance: Form = {
  id: 'key-distance',
  trade: 'S12',
  piles: 1,
  name: () => 'key distance',
  fits: ({ is }) => is === 'two cards',
  variants: (n) =>
    n < 3
      ? []
      : range(n - 1).map((i) => {
          const by = i + 1;
          return {
            key: String(by),
            // The second card's places come after all places of the first.
            pattern: {
              of: 'pairs',
              pairs: range(n).map((p): Pair => [p, n + ((p + by) % n)]),
              relation: 'alike',
            },
            say: ({ words: { alike: key, opposite: card } }) =>
              by <= n / 2
                ? `going round, ${card} lies ${by} ${by === 1 ? 'place' : 'places'} below ${key}`
                : `going round, ${card} lies ${n - by} ${n - by === 1 ? 'place' : 'places'} above ${key}`,
            ring: true,
          };
        }),
};
