import { bothRelations, isClass, range, type Form, type Pair } from '../form.ts';

/** S3 in two packets, and its plain sister: two piles correspond card by card, in the same order or in opposite order. */
export const across: Form = {
  id: 'across',
  trade: 'S3',
  piles: 2,
  name: () => 'two piles alike',
  fits: isClass,
  variants(n, subject, m) {
    if (n !== m || n < 2) return [];
    const same = range(n).map((p): Pair => [p, n + p]);
    const opposite = range(n).map((p): Pair => [p, 2 * n - 1 - p]);
    const named = (where: string, pairs: readonly Pair[], key: string) =>
      bothRelations(pairs, subject, '', false, key).map((variant) => ({
        ...variant,
        say: (...[of, value, piles]: Parameters<typeof variant.say>) =>
          `the cards of ${piles.join(' and ')}, taken ${where},${variant.say(of, value, piles)}`,
      }));
    return [
      ...named('in order from their tops', same, 'same '),
      ...named('one from its top and the other from its bottom', opposite, 'turned '),
    ];
  },
};
