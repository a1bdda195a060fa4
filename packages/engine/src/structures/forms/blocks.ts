import { isClass, range, type Form } from '../form.ts';

/** S8, block form: each block of k cards from the top shows every class once. */
export const blocks: Form = {
  id: 'blocks',
  trade: 'S8',
  piles: 1,
  name: () => 'one of each in every block',
  fits: (subject) => isClass(subject) && subject.measures.length > 2,
  variants(n, { measures }) {
    const k = measures.length;
    if (k > n) return [];
    const groups = range(Math.floor(n / k)).map((b) => range(k).map((i) => b * k + i));
    return [
      {
        key: String(k),
        pattern: { of: 'one of each', groups },
        say: ({ words }) => `every block of ${k} from the top has ${words.oneOfEach}`,
        ring: false,
      },
    ];
  },
};
