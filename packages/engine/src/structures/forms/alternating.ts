import { isTwoValued, range, type Form, type Pair } from '../form.ts';

/** S1: neighbours differ. With facing joined to a class it is S6, the turnover order. */
export const alternating: Form = {
  id: 'alternating',
  trade: 'S1',
  piles: 1,
  name: ({ joinsFacing }) => (joinsFacing ? 'turnover order' : 'alternating'),
  fits: isTwoValued,
  variants(n) {
    if (n < 3) return [];
    const pairs = range(n - 1).map((p): Pair => [p, p + 1]);
    return [
      {
        key: '',
        pattern: { of: 'pairs', pairs, relation: 'opposite' },
        say: ({ words, joinsFacing }) =>
          joinsFacing ? `neighbours ${words.opposite}` : `${words.plural} alternate`,
        ring: n % 2 === 0,
      },
    ];
  },
};
