import type { Amount, PileRef } from '../phrases/values.ts';
import { phrase } from '../phrases/phrase.ts';
import { countedThenRest } from './count-and-transfer.ts';
import { cardCount } from './handling.ts';
import { defineMove, pileName, pileSize } from './move.ts';
import { chooseNumber, isOpen } from './open.ts';

type RunArgs = { pile: PileRef; count: Amount };

/** P27: in an overhand shuffle, single cards run off and the rest thrown on them. */
export const run = defineMove<RunArgs>({
  id: 'run',
  procedures: ['P27'],
  hands: 'mix',
  title: 'run and throw',
  phrases: [
    phrase(
      'run {count:cards} [singly|one by one] [from {pile:pile}] and (throw|toss|drop) the rest on [top of] (top|them)',
    ),
    phrase('run {count:cards} and (throw|toss|drop) {pile:pile} on [top of] (top|them)'),
  ],
  defaults: { pile: 'packet' },
  help: 'Single cards are run from the top into the other hand, which reverses them, and the rest is thrown on them.',
  caution:
    'The same as counting that many cards and dropping the rest on top, though it looks like a shuffle.',
  synonyms: ['run and toss', 'run and throw'],
  options(args, view) {
    return chooseNumber(args.count, args.pile, view, (k) => ({
      actions: countedThenRest(pileName(args.pile, view), k, pileSize(args.pile, view), 'on top'),
      next: null,
    }));
  },
  say: ({ count }, [k]) => (!isOpen(count) ? '' : k === 0 ? 'runs nothing' : `runs ${cardCount(Number(k))}`),
  examples: [
    {
      before: '1 2 3 4 5 6 7 8',
      sentence: 'Run 3 cards and throw the rest on top.',
      choices: [],
      after: '4 5 6 7 8 3 2 1',
    },
    {
      before: '1 2 3 4',
      sentence: 'Run any number of cards and throw the rest on top.',
      choices: [4],
      after: '4 3 2 1',
    },
  ],
});
