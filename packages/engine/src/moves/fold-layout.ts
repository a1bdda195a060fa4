import { phrase } from '../phrases/phrase.ts';
import type { PileRef } from '../phrases/values.ts';
import { carry, type Action } from '../pictures/actions.ts';
import { cellName, cellsOf, type Cell } from './cells.ts';
import { decided, named, within, type Way } from './handling.ts';
import { defineMove, pileName, START, stuck } from './move.ts';
import { turned, type How } from './open.ts';

type FoldLayoutArgs = { to: PileRef; how: How };

/** A side of a layout that can be folded in. */
export type Side = 'top row' | 'bottom row' | 'left column' | 'right column';
const FOLD = 'fold';

/** P70: a layout is folded from its edges, a whole outer row or column at a time, until one heap is left. */
export const foldLayout = defineMove<FoldLayoutArgs>({
  id: 'fold-layout',
  procedures: ['P70'],
  hands: 'turn',
  title: 'fold a layout',
  phrases: [
    phrase(
      'fold the (layout|rows and columns) in any order [into {to:newpile}] [, turning each heap {how=sideways|end over end}]',
    ),
    phrase('fold up the layout [into {to:newpile}]'),
  ],
  defaults: { to: 'packet', how: 'sideways' },
  help: 'An outer row or column is folded over onto the next, each heap turned onto its neighbour, in any order until one heap is left.',
  caution:
    'In the end the face of a card tells only the parity of its row plus column. A diagonal move or a closed gap breaks this.',
  synonyms: ['letter fold', 'rug fold'],
  brings: ({ to }) => ({ piles: named(to) }),
  open: true,
  options(args, view) {
    const cells = cellsOf(view.layout);
    if (cells.length === 0) return stuck('no-layout');
    const to = pileName(args.to, view);
    if (cells.length === 1 && view.phase === START)
      return [
        { key: 'one heap', actions: [carry(cells[0].name, 0, cells[0].size, to, 0)], next: null, off: 0 },
      ];
    const ways = SIDES.flatMap((side): Way[] => {
      const actions = foldSide(cells, side, args.how);
      if (actions.length === 0) return [];
      const left = cells.length - actions.length;
      if (left > 1) return [{ key: side, actions, next: FOLD }];
      const last = actions[actions.length - 1];
      const size = cells.reduce((sum, cell) => sum + cell.size, 0);
      return last.do === 'carry'
        ? [{ key: side, actions: [...actions, carry(last.to, 0, size, to, 0)], next: null }]
        : [];
    });
    if (ways.length === 0) return stuck('no-layout');
    return view.phase === START ? decided(ways) : within(ways);
  },
  say: (_args, keys) => `folds ${keys.join(', ')}`,
  examples: [
    {
      before: 'cell 1 1: 1; cell 1 2: 2; cell 2 1: 3; cell 2 2: 4',
      sentence: 'Fold the layout in any order.',
      choices: ['top row', 'left column'],
      after: '3^ 1 2^ 4',
    },
  ],
});

const SIDES: readonly Side[] = ['top row', 'bottom row', 'left column', 'right column'];

/** Turns each heap of an outer line onto its neighbour; nothing where there is but one such line. */
export function foldSide(cells: readonly Cell[], side: Side, how: How): Action[] {
  const byRow = side.endsWith('row');
  const lineOf = (cell: Cell): number => (byRow ? cell.row : cell.column);
  const lines = cells.map(lineOf);
  const [low, high] = [Math.min(...lines), Math.max(...lines)];
  if (low === high) return [];
  const first = side === 'top row' || side === 'left column';
  const line = first ? low : high;
  const next = first ? low + 1 : high - 1;
  const folds = cells
    .filter((cell) => lineOf(cell) === line)
    .map((cell) => {
      const onto = byRow ? cellName(next, cell.column) : cellName(cell.row, next);
      return carry(cell.name, 0, cell.size, onto, 0, turned(how));
    });
  // A heap without a neighbour would have to cross a gap, which is no fold.
  return folds.every(({ to }) => cells.some(({ name }) => name === to)) ? folds : [];
}
