import { isClass, range, type Form, type Pair } from '../form.ts';

/** S8, exact: every class comes again after k places. */
export const repeating: Form = {
  id: 'repeating',
  trade: 'S8',
  piles: 1,
  name: () => 'repeating',
  fits: isClass,
  variants: (n) =>
    range(Math.max(0, Math.floor(n / 2) - 1)).map((i) => {
      const k = i + 2;
      return {
        key: String(k),
        pattern: {
          of: 'pairs',
          pairs: range(n - k).map((p): Pair => [p, p + k]),
          relation: 'alike',
        },
        say: ({ words }) => `cards ${k} places apart ${words.alike}`,
        ring: n % k === 0,
      };
    }),
};
