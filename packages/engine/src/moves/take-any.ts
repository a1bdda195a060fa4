import { trouble } from '../base/diagnostic.ts';
import type { Amount, NumberRef, PileRef } from '../phrases/values.ts';
import { phrase, same } from '../phrases/phrase.ts';
import { layOn, named } from './handling.ts';
import { defineMove, pileName, stuck } from './move.ts';
import { saidPlaces, separate } from './strip-out.ts';

type TakeAnyArgs = { pile: PileRef; to: PileRef; count?: NumberRef; some?: Amount };

/** P63, P66: any cards taken out from anywhere and laid together on another pile. */
export const takeAny = defineMove<TakeAnyArgs>({
  id: 'take-any',
  procedures: ['P63', 'P66'],
  hands: 'choose',
  title: 'take any cards',
  phrases: [
    phrase(
      '(take|remove|draw|pick|picks|takes|removes|draws|take out|pick out) any {count:number} cards [(from|of) {pile:pile}] [(to|onto) {to:newpile}]',
    ),
    phrase(
      '(take|remove|draw|take out|pick out) {some:cards} from anywhere [in {pile:pile}] [(to|onto) {to:newpile}]',
    ),
  ],
  defaults: { pile: 'packet', to: 'table' },
  help: 'Card by card from the top, each is kept or taken. The cards taken keep their order and lie on the other pile; those kept close up.',
  caution: 'Places below a removed card shift, and after an odd number of them even places become odd.',
  synonyms: ['remove any cards', 'pick two'],
  brings: ({ to }) => ({ piles: named(to) }),
  check: ({ pile, to }) => (same(pile, to) ? [trouble('pile-twice')] : []),
  options(args, view) {
    const to = pileName(args.to, view);
    if (to === pileName(args.pile, view)) return stuck('pile-twice', { piles: [to] });
    const count: Amount =
      args.some ?? (args.count === undefined ? { of: 'any' } : { of: 'exactly', n: args.count });
    return separate(args.pile, count, view, (taken, kept, pile) => [
      ...layOn('~kept', kept, pile),
      ...layOn('~stripped', taken, to),
    ]);
  },
  say: (_args, keys) => `takes ${saidPlaces(keys)}`,
  examples: [
    {
      before: '1 2 3 4',
      sentence: 'Take any 2 cards to the hand.',
      choices: ['keep', 'strip', 'keep'],
      after: 'hand: 2 4; packet: 1 3',
    },
    {
      before: '1 2 3 4',
      sentence: 'Remove any number of cards from anywhere.',
      choices: ['strip', 'keep', 'keep', 'strip'],
      after: 'packet: 2 3; table: 1 4',
    },
  ],
});
