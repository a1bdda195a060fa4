import { range, type Form, type Variant } from '../form.ts';

// Recurrences x(p+k) = x(p+j) + x(p) of the greatest period 2^k - 1 (primitive trinomials over two elements).
const RECURRENCES: readonly (readonly [number, number])[] = [
  [3, 1],
  [3, 2],
  [4, 1],
  [4, 3],
  [5, 2],
  [5, 3],
  [6, 1],
  [6, 5],
];

/** S17, where it is linear: every window of k cards in a row has colours of its own, and tells where in the packet it lies. */
export const windows: Form = {
  id: 'windows',
  trade: 'S17',
  piles: 1,
  name: () => 'windows',
  fits: ({ is, measures, joinsFacing, ones }) =>
    is === 'class' && measures.length === 1 && !joinsFacing && ones !== undefined,
  variants: (n) =>
    RECURRENCES.flatMap(([k, j]): Variant[] =>
      // On a short packet such a rule says hardly anything.
      n < 2 * k + 1
        ? []
        : ([0, 1] as const).map((odd) => ({
            key: `${k} ${j} ${odd}`,
            pattern: { of: 'parity', groups: range(n - k).map((p) => [p, p + j, p + k]), odd },
            say: ({ ones }) =>
              `of any card, the one ${j} below and the one ${k} below it, an ${odd === 1 ? 'odd' : 'even'} number are ${ones}, so that ${k} cards in a row tell what follows`,
            ring: n % (2 ** k - 1) === 0,
          })),
    ),
};
