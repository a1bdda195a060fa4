import type { Amount, PileRef, PlaceRef, Block } from '../phrases/values.ts';
import { phrase } from '../phrases/phrase.ts';
import { printOrdinal } from '../phrases/tokens.ts';
import { mark } from '../pictures/actions.ts';
import { decided } from './handling.ts';
import { allowed, defineMove, pileName, pileSize, placeIndex, stuck, type View } from './move.ts';

type NoteCardArgs = { pile: PileRef; at?: PlaceRef; among?: Block; mark: string };

/** 0-based places that may be noted. */
function places({ pile, at, among }: NoteCardArgs, view: View): number[] {
  const size = pileSize(pile, view);
  const all = Array.from({ length: size }, (_, i) => i);
  if (at !== undefined) return all.filter((i) => i === placeIndex(at, size, view));
  if (among === undefined) return all;
  // Of an open number of cards the largest counts: each smaller one is a part of it.
  const counts = allowed(among.cards satisfies Amount, 0, size, view);
  const most = counts[counts.length - 1] ?? 0;
  return all.filter((i) => (among.end === 'top' ? i < most : i >= size - most));
}

/** P61, P64: a card is noted where it lies; nothing moves, but later sentences may speak of it. */
export const noteCard = defineMove<NoteCardArgs>({
  id: 'note-card',
  procedures: ['P61', 'P64'],
  hands: 'choose',
  title: 'note a card',
  phrases: [
    phrase(
      '(the spectator|they|) (notes|note|remembers|remember|looks at|look at|peeks at|peek at) {at:place} [of {pile:pile}], call it {mark:newname}',
    ),
    phrase(
      '(the spectator|they|) (notes|note|remembers|remember|looks at|look at|peeks at|peek at|thinks of|think of) any card [of {pile:pile}], call it {mark:newname}',
    ),
    phrase(
      '(the spectator|they|) (notes|note|remembers|remember|looks at|look at|peeks at|peek at) {at:place} [of {pile:pile}]',
      { mark: 'chosen' },
    ),
    phrase(
      '(the spectator|they|) (notes|note|remembers|remember|looks at|look at|peeks at|peek at|thinks of|think of) any card [of {pile:pile}]',
      { mark: 'chosen' },
    ),
    phrase(
      '(the spectator|they|) (notes|note|remembers|remember|looks at|look at|peeks at|peek at|thinks of|think of) (any|one) of {among:block} [of {pile:pile}], call it {mark:newname}',
    ),
  ],
  defaults: { pile: 'packet' },
  help: 'The card is noted where it lies, and gets a name for later sentences. Nothing moves.',
  caution:
    'After a cut, the face of the lifted packet and the top card of the rest are different cards: name the pile.',
  synonyms: ['peek at a card', 'think of a card', 'remember a card'],
  brings: ({ mark: name }) => ({ marks: [name] }),
  options(args, view) {
    const pile = pileName(args.pile, view);
    const open = places(args, view);
    if (open.length === 0) return stuck('no-such-card', { pile, size: pileSize(args.pile, view) });
    return decided(
      open.map((i) => ({ key: i + 1, actions: [mark(pile, i, 1, args.mark, 'set')], next: null })),
    );
  },
  say: ({ at }, [n]) => (at === undefined ? `notes the ${printOrdinal(Number(n))} card` : ''),
  examples: [
    {
      before: '1 2 3 4',
      sentence: 'The spectator notes the 3rd card, call it chosen.',
      choices: [],
      after: '1 2 3(chosen) 4',
    },
    {
      before: 'packet: 1 2; table: 3 4 5',
      sentence: 'The spectator remembers the bottom card of the table, call it chosen.',
      choices: [],
      after: 'packet: 1 2; table: 3 4 5(chosen)',
    },
    {
      before: 'n = 2; 1 2 3',
      sentence: 'The spectator notes the Nth card, call it secret.',
      choices: [],
      after: '1 2(secret) 3',
    },
    {
      before: '1 2 3',
      sentence: 'The spectator thinks of any card, call it chosen.',
      choices: [1],
      after: '1(chosen) 2 3',
    },
    {
      before: '1 2 3 4',
      sentence: 'The spectator thinks of one of the top 3 cards, call it chosen.',
      choices: [3],
      after: '1 2 3(chosen) 4',
    },
  ],
});
