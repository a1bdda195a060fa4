import { phrase } from '../phrases/phrase.ts';
import { cellsOf } from './cells.ts';
import { foldSide, type Side } from './fold-layout.ts';
import { defineMove, stuck } from './move.ts';
import { turnReading, type How } from './open.ts';

type FoldLineArgs = { side: Side; how: How };

/** P70: an outer row or column of a layout folded over onto its neighbour. */
export const foldLine = defineMove<FoldLineArgs>({
  id: 'fold-line',
  procedures: ['P70'],
  hands: 'turn',
  title: 'fold a row or column',
  phrases: [
    phrase(
      'fold the {side=top row~upper row|bottom row~lower row|left column|right column} [over] (onto|over) (its neighbour|the next [one]) [{how=sideways|end over end}]',
    ),
    phrase('fold the {side=top row~upper row} (down|over) [{how=sideways|end over end}]'),
    phrase('fold the {side=bottom row~lower row} (up|over) [{how=sideways|end over end}]'),
    phrase('fold the {side=left column|right column} (in|over) [{how=sideways|end over end}]'),
  ],
  defaults: { how: 'sideways' },
  help: 'Each pile of the outermost row or column is turned over onto the pile next to it, further in.',
  caution: 'Do not close up gaps: piles two cells apart are no neighbours.',
  synonyms: ['fold down'],
  readings: ({ how }) => turnReading(how),
  options(args, view) {
    const cells = cellsOf(view.layout);
    if (cells.length === 0) return stuck('no-layout');
    const actions = foldSide(cells, args.side, args.how);
    if (actions.length === 0) return stuck('nothing-to-fold-onto', { side: args.side });
    return [{ key: args.side, actions, next: null, off: 0 }];
  },
  say: () => '',
  examples: [
    {
      before: 'cell 1 1: 1; cell 1 2: 2; cell 2 1: 3; cell 2 2: 4',
      sentence: 'Fold the top row down.',
      choices: [],
      after: 'cell 2 1: 1^ 3; cell 2 2: 2^ 4',
    },
    {
      before: 'cell 2 1: 1^ 3; cell 2 2: 2^ 4',
      sentence: 'Fold the left column onto its neighbour.',
      choices: [],
      after: 'cell 2 2: 3^ 1 2^ 4',
    },
  ],
});
