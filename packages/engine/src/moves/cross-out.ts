import { trouble } from '../base/diagnostic.ts';
import type { PileRef } from '../phrases/values.ts';
import { phrase, same } from '../phrases/phrase.ts';
import { carry, type Action } from '../pictures/actions.ts';
import { cellsOf } from './cells.ts';
import { decided, named } from './handling.ts';
import { defineMove, pileName, stuck } from './move.ts';

type CrossOutArgs = { to: PileRef; away: PileRef };

/** P68: one card of a layout is taken, and what is left of its row and its column goes. */
export const crossOut = defineMove<CrossOutArgs>({
  id: 'cross-out',
  procedures: ['P68'],
  hands: 'choose',
  title: 'cross out row and column',
  phrases: [
    phrase(
      'take any card of the layout [to {to:newpile}] and (discard|remove|cross out) [the rest of] its row and column [to {away:newpile}]',
    ),
  ],
  defaults: { to: 'table', away: 'discard' },
  help: 'A card of the layout is taken, and all other cards of its row and of its column are put away. As many times as there are rows, one card of each row and column is taken.',
  caution:
    'Places are free, so a claim can only rest on values that are the sum of a row part and a column part.',
  synonyms: ['cross out rows and columns'],
  brings: ({ to, away }) => ({ piles: named(to, away) }),
  check: ({ to, away }) => (same(to, away) ? [trouble('pile-twice')] : []),
  open: true,
  options(args, view) {
    const to = pileName(args.to, view);
    const away = pileName(args.away, view);
    const cells = cellsOf(view.layout).sort((a, b) => a.row - b.row || a.column - b.column);
    if (cells.length === 0) return stuck('no-layout');
    return decided(
      cells.map((taken) => {
        const crossed = cells.filter(
          (cell) => cell !== taken && (cell.row === taken.row || cell.column === taken.column),
        );
        const actions: Action[] = [carry(taken.name, 0, taken.size, to, 0)];
        for (const { name, size } of crossed) actions.push(carry(name, 0, size, away, 0));
        return { key: `${taken.row} ${taken.column}`, actions, next: null };
      }),
    );
  },
  say: (_args, [key]) => {
    const [row, column] = String(key).split(' ');
    return `takes the card in row ${row}, column ${column}`;
  },
  examples: [
    {
      before: 'cell 1 1: 1; cell 1 2: 2; cell 2 1: 3; cell 2 2: 4',
      sentence: 'Take any card of the layout and discard its row and column.',
      choices: ['1 2'],
      after: 'cell 2 1: 3; discard: 4 1; table: 2',
    },
  ],
});
