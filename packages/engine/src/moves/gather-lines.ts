import type { PileRef } from '../phrases/values.ts';
import { phrase } from '../phrases/phrase.ts';
import { carry } from '../pictures/actions.ts';
import { cellsOf, closeLines, type Line, type Outer } from './cells.ts';
import { named } from './handling.ts';
import { defineMove, pileName, stuck } from './move.ts';

type GatherLinesArgs = { line: Line; first: Outer; closed: Outer; to: PileRef };

/** P32, P33: a layout of cells gathered row by row or column by column. */
export const gatherLines = defineMove<GatherLinesArgs>({
  id: 'gather-lines',
  procedures: ['P32', 'P33'],
  hands: 'gather',
  title: 'gather rows or columns',
  phrases: [
    phrase(
      '(gather|collect|pick up) (the|by) {line=columns|rows} [, the {first=first|last} on top] ' +
        '[, each closed with its {closed=first|last} card uppermost] [into {to:newpile}]',
    ),
  ],
  defaults: { first: 'first', closed: 'first', to: 'packet' },
  help: 'Each row or column is closed up, then they are laid together. First is the upper row, the left column, and in a line its upper or left card.',
  caution: 'Which line lies uppermost and how a line is closed both change the order.',
  synonyms: ['collect the columns'],
  brings: ({ to }) => ({ piles: named(to) }),
  readings: ({ line, first, closed }) => {
    const end = line === 'rows' ? { first: 'left', last: 'right' } : { first: 'top', last: 'bottom' };
    return [
      {
        word: 'gather',
        taken: `the ${first} ${line.slice(0, -1)} on top, the ${end[closed]} card of each uppermost`,
        other: `Gather the ${line}, the ${first === 'first' ? 'last' : 'first'} on top`,
      },
    ];
  },
  options(args, view) {
    const cells = cellsOf(view.layout);
    if (cells.length === 0) return stuck('no-layout');
    const all = cells.reduce((sum, { size }) => sum + size, 0);
    const actions = closeLines(cells, args.line, args.first, args.closed, '~gathered');
    return [
      {
        key: 'gather',
        actions: [...actions, carry('~gathered', 0, all, pileName(args.to, view), 0)],
        next: null,
        off: 0,
      },
    ];
  },
  say: () => '',
  examples: [
    {
      before: 'cell 1 1: 1; cell 1 2: 2; cell 2 1: 4; cell 2 2: 3',
      sentence: 'Gather the columns.',
      choices: [],
      after: '1 4 2 3',
    },
    {
      before: 'cell 1 1: 1; cell 1 2: 2; cell 2 1: 4; cell 2 2: 3',
      sentence: 'Gather the rows, the last on top.',
      choices: [],
      after: '4 3 1 2',
    },
    {
      before: 'cell 1 1: 1; cell 1 2: 2; cell 2 1: 4; cell 2 2: 3',
      sentence: 'Gather the columns, each closed with its last card uppermost.',
      choices: [],
      after: '4 1 3 2',
    },
  ],
});
