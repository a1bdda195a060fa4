import { range, type Form, type Variant } from '../form.ts';

/** S14 in two packets: their cards, taken two by two, add up to the same. */
export const sumsAcross: Form = {
  id: 'sums-across',
  trade: 'S14',
  piles: 2,
  name: () => 'equal sums across',
  fits: ({ is }) => is === 'number',
  variants(n, _subject, m) {
    if (n !== m || n < 2) return [];
    const variant = (key: string, where: string, groups: number[][]): Variant => ({
      key,
      pattern: { of: 'same sum', groups },
      say: ({ words }, value, piles) =>
        `${words.plural} of the cards of ${piles.join(' and ')}, taken ${where}, add up to ${value}`,
      ring: false,
    });
    return [
      variant(
        'same',
        'in order from their tops',
        range(n).map((p) => [p, n + p]),
      ),
      variant(
        'turned',
        'one from its top and the other from its bottom',
        range(n).map((p) => [p, 2 * n - 1 - p]),
      ),
    ];
  },
};
