import type { NumberRef, PileRef } from '../phrases/values.ts';
import { phrase } from '../phrases/phrase.ts';
import { carry } from '../pictures/actions.ts';
import { cellName, closeLines, layRows, noLayout, type Cell, type LayWay, type Outer } from './cells.ts';
import { PILE } from './handling.ts';
import { defineMove, numberOf, pileName, pileSize, stuck } from './move.ts';

type TransposeArgs = { pile: PileRef; rows: NumberRef; columns: NumberRef; way: LayWay; first: Outer };

/** P32: cards dealt in rows and gathered by columns. */
export const transpose = defineMove<TransposeArgs>({
  id: 'transpose',
  procedures: ['P32'],
  hands: 'deal',
  title: 'deal rows, gather columns',
  phrases: [
    phrase(
      `(deal|lay out|deal out|lay) ${PILE} [out] (into|in) {rows:number} rows of {columns:number} [cards] ` +
        '[, {way=row by row|rows alternately~snakewise}] and gather (the columns|columns|by columns) [, the {first=first|last} [column] on top]',
    ),
  ],
  defaults: { pile: 'packet', way: 'row by row', first: 'first' },
  help: 'Cards are laid in rows from the left, and each column is closed up with its top row uppermost. Column 1 goes on top of column 2, and so on.',
  caution:
    'The cards must fill the rows exactly. With the last column on top the columns come in the other order.',
  synonyms: ['rows and columns'],
  check: ({ rows, columns }) => noLayout(rows, columns),
  readings: ({ first }) => [
    {
      word: 'gather',
      taken: `the top row uppermost in each column, the ${first} column on top`,
      other: `Deal the packet into ... rows of ... and gather the columns, the ${first === 'first' ? 'last' : 'first'} on top`,
    },
  ],
  options(args, view) {
    const pile = pileName(args.pile, view);
    const size = pileSize(args.pile, view);
    const rows = numberOf(args.rows, view);
    const columns = numberOf(args.columns, view);
    if (rows * columns !== size) return stuck('rows-do-not-fit', { pile, size, rows, columns });
    const cells: Cell[] = [];
    for (let row = 1; row <= rows; row++)
      for (let column = 1; column <= columns; column++)
        cells.push({ name: cellName(row, column, '~cell'), row, column, size: 1 });
    const gatherUp = closeLines(cells, 'columns', args.first, 'first', '~gathered');
    const taken = size === 0 ? [] : [carry('~gathered', 0, size, pile, 0)];
    return [
      {
        key: 'transpose',
        actions: [...layRows(pile, rows, columns, args.way, '~cell'), ...gatherUp, ...taken],
        next: null,
        off: 0,
      },
    ];
  },
  say: () => '',
  examples: [
    {
      before: '1 2 3 4 5 6 7 8',
      sentence: 'Deal the packet into 2 rows of 4 and gather the columns.',
      choices: [],
      after: '1 5 2 6 3 7 4 8',
    },
    {
      before: '1 2 3 4 5 6 7 8',
      sentence: 'Deal the packet into 2 rows of 4 and gather the columns, the last on top.',
      choices: [],
      after: '4 8 3 7 2 6 1 5',
    },
  ],
});
