import { range, type Form, type Variant } from '../form.ts';

/** S14: pairs whose numbers add up to the same. */
export const sums: Form = {
  id: 'sums',
  trade: 'S14',
  piles: 1,
  name: () => 'equal sums',
  fits: ({ is }) => is === 'number',
  variants(n) {
    if (n < 4) return [];
    const variant = (key: string, where: string, groups: number[][]): Variant => ({
      key,
      pattern: { of: 'same sum', groups },
      say: ({ words }, value) => `${words.plural} of ${where} add up to ${value}`,
      ring: false,
    });
    const half = Math.floor(n / 2);
    return [
      variant(
        'mirror',
        'mirror pairs, counted from both ends,',
        range(half).map((p) => [p, n - 1 - p]),
      ),
      ...(n % 2 === 0
        ? [
            variant(
              'half',
              'cards half the packet apart',
              range(half).map((p) => [p, p + half]),
            ),
          ]
        : []),
      variant(
        'pairs',
        'each pair from the top',
        range(half).map((j) => [2 * j, 2 * j + 1]),
      ),
    ];
  },
};
