import { isClass, range, type Form, type Pair } from '../form.ts';

/** All cards alike; with facing joined to a class it is S7, a class shown by its face. */
export const allAlike: Form = {
  id: 'all-alike',
  trade: '',
  piles: 1,
  name: ({ joinsFacing }) => (joinsFacing ? 'class shown by face' : 'all alike'),
  fits: isClass,
  variants(n) {
    if (n < 2) return [];
    const pairs = range(n - 1).map((p): Pair => [p, p + 1]);
    return [
      {
        key: '',
        pattern: { of: 'pairs', pairs, relation: 'alike' },
        say: ({ words }) => `all cards ${words.alike}`,
        ring: false,
      },
    ];
  },
};
