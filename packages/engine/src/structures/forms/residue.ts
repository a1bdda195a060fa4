import { range, type Form } from '../form.ts';

/** S11: a card that is followed lies at one of every k places. */
export const residue: Form = {
  id: 'residue',
  trade: 'S11',
  piles: 1,
  name: () => 'place known in part',
  fits: ({ is, id }) => is === 'count' && /^(mark|card) /.test(id),
  variants: (n) =>
    range(n)
      .flatMap((i) => {
        const k = n - i;
        return k < 2 ? [] : range(k).map((rest) => ({ k, rest }));
      })
      .map(({ k, rest }) => ({
        key: `${k} ${rest}`,
        pattern: { of: 'count' as const, plus: range(n).filter((p) => p % k === rest), minus: [] },
        say: ({ words }, value) => {
          const one = value === 1 ? `the ${words.noun} is` : `${value} ${words.plural} are`;
          if (k === n) return `${one} at place ${rest + 1}`;
          return k === 2
            ? `${one} at an ${rest === 0 ? 'odd' : 'even'} place`
            : `${one} at one of the places ${rest + 1}, ${rest + 1 + k} and so on`;
        },
        ring: false,
      })),
};
