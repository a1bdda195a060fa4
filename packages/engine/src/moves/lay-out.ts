import { trouble } from '../base/diagnostic.ts';
import type { NumberRef, PileRef } from '../phrases/values.ts';
import { phrase } from '../phrases/phrase.ts';
import { mark } from '../pictures/actions.ts';
import { cellName, layRows, noLayout, type LayWay } from './cells.ts';
import type { Face } from './deal.ts';
import { PILE } from './handling.ts';
import { defineMove, pileName, pileSize, stuck } from './move.ts';

type LayOutArgs = { pile: PileRef; rows: NumberRef; columns: NumberRef; way: LayWay; face?: Face };

/** More cells than a table holds. */
const MOST_CELLS = 104;

/** P33: cards laid out in rows, straight or snakewise. */
export const layOut = defineMove<LayOutArgs>({
  id: 'lay-out',
  procedures: ['P33'],
  hands: 'deal',
  title: 'lay out in rows',
  phrases: [
    phrase(
      `(lay out|lay|deal out|deal) ${PILE} [out] (in|into) {rows:number} rows of {columns:number} [cards] ` +
        '[, {way=row by row|rows alternately~snakewise~in a snake}] [{face=face up|face down}]',
    ),
    phrase('lay out a snake of {rows:number} rows of {columns:number} [cards] [from {pile:pile}]', {
      way: 'rows alternately',
    }),
  ],
  defaults: { pile: 'packet', way: 'row by row' },
  help: 'Each card is laid in a cell of its own, cell 1 1 at the upper left. Rows alternately means the first from left to right, the second from right to left, and so on.',
  caution:
    'Rows alternately make the place in the packet even or odd as row plus column is; straight rows do so only when they have an odd length.',
  synonyms: ['snake', 'boustrophedon'],
  brings({ rows, columns }) {
    const piles: string[] = [];
    if (typeof rows === 'number' && typeof columns === 'number' && rows * columns <= MOST_CELLS)
      for (let row = 1; row <= rows; row++)
        for (let column = 1; column <= columns; column++) piles.push(cellName(row, column));
    return { piles };
  },
  check({ rows, columns }) {
    if (typeof rows !== 'number' || typeof columns !== 'number') return [trouble('rows-not-stated')];
    return rows * columns > MOST_CELLS
      ? [trouble('too-many-cells', { most: MOST_CELLS })]
      : noLayout(rows, columns);
  },
  readings: ({ way }) =>
    way === 'row by row'
      ? [
          {
            word: 'rows',
            taken: 'each row from left to right',
            other: 'Lay out the packet in ... rows of ..., rows alternately',
          },
        ]
      : [],
  options(args, view) {
    const pile = pileName(args.pile, view);
    const size = pileSize(args.pile, view);
    // `check` refuses rows that are not written as numbers.
    const rows = Number(args.rows);
    const columns = Number(args.columns);
    if (rows * columns !== size) return stuck('rows-do-not-fit', { pile, size, rows, columns });
    const actions = layRows(pile, rows, columns, args.way).flatMap((action) =>
      args.face === undefined || action.do !== 'carry'
        ? [action]
        : [action, mark(action.to, 0, 1, 'up', args.face === 'face up' ? 'set' : 'clear')],
    );
    return [{ key: 'lay', actions, next: null, off: 0 }];
  },
  say: () => '',
  examples: [
    {
      before: '1 2 3 4',
      sentence: 'Lay out the packet in 2 rows of 2, rows alternately.',
      choices: [],
      after: 'cell 1 1: 1; cell 1 2: 2; cell 2 1: 4; cell 2 2: 3',
    },
    {
      before: '1 2 3 4 5 6',
      sentence: 'Lay out the packet in 2 rows of 3 face up.',
      choices: [],
      after: 'cell 1 1: 1^; cell 1 2: 2^; cell 1 3: 3^; cell 2 1: 4^; cell 2 2: 5^; cell 2 3: 6^',
    },
  ],
});
