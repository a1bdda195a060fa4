import { range, type Form } from '../form.ts';

/** S15: laid out in rows, every number is its row's and its column's together, so that one card of each row and column comes to the same. */
export const grid: Form = {
  id: 'grid',
  trade: 'S15',
  piles: 1,
  name: () => 'fixed sums',
  fits: ({ is }) => is === 'number',
  variants: (n) =>
    range(n).flatMap((i) => {
      const columns = i + 2;
      const rows = n / columns;
      if (!Number.isInteger(rows) || rows < 2) return [];
      const groups = range(rows - 1).flatMap((r) =>
        range(columns - 1).map((c) => {
          const at = r * columns + c;
          return { plus: [at, at + columns + 1], minus: [at + 1, at + columns] };
        }),
      );
      return [
        {
          key: String(columns),
          pattern: { of: 'balanced' as const, groups },
          say: ({ words }) =>
            `laid out in rows of ${columns}, ${words.plural} of cards at opposite corners of any block come to the same`,
          ring: false,
        },
      ];
    }),
};
