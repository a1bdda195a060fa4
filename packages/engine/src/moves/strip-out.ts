import type { Amount, PileRef } from '../phrases/values.ts';
import { phrase } from '../phrases/phrase.ts';
import { carry, type Action } from '../pictures/actions.ts';
import { sizeOf } from '../pictures/layout.ts';
import { decided, layOn, within, type Way } from './handling.ts';
import { allowed, defineMove, pileName, START, stuck, type Key, type Option, type View } from './move.ts';

type StripOutArgs = { pile: PileRef; count: Amount; where: 'on top' | 'beneath' };

/** P56: any cards taken out of the packet, their order kept, and put together on top. */
export const stripOut = defineMove<StripOutArgs>({
  id: 'strip-out',
  procedures: ['P56'],
  hands: 'mix',
  title: 'strip out any cards',
  phrases: [
    phrase('strip out {count:cards} [from anywhere] [from {pile:pile}] and put them on top', {
      where: 'on top',
    }),
    phrase('strip out any cards [from anywhere] [from {pile:pile}] and put them on top', {
      count: { of: 'any' },
      where: 'on top',
    }),
    phrase(
      'strip out {count:cards} [from anywhere] [from {pile:pile}] and put them (beneath|below|at the bottom)',
      {
        where: 'beneath',
      },
    ),
    phrase(
      'strip out any cards [from anywhere] [from {pile:pile}] and put them (beneath|below|at the bottom)',
      {
        count: { of: 'any' },
        where: 'beneath',
      },
    ),
  ],
  defaults: { pile: 'packet', where: 'on top' },
  help:
    'Card by card from the top, each is kept in its place or stripped out. The stripped ones keep their order and go together on top. ' +
    'This is a riffle run backwards.',
  caution:
    'Stripping out none or all of the cards changes nothing, and is allowed unless a number is stated.',
  synonyms: ['inverse riffle'],
  options: (args, view) =>
    separate(args.pile, args.count, view, (stripped, kept, pile) => {
      const [upper, lower] = args.where === 'on top' ? ['~stripped', '~kept'] : ['~kept', '~stripped'];
      const [above, below] = args.where === 'on top' ? [stripped, kept] : [kept, stripped];
      return [...layOn(lower, below, pile), ...layOn(upper, above, pile)];
    }),
  say: (_args, keys) => `strips out ${saidPlaces(keys)}`,
  examples: [
    {
      before: '1 2 3 4 5 6',
      sentence: 'Strip out any number of cards and put them on top.',
      choices: ['keep', 'strip', 'strip', 'keep', 'strip', 'keep'],
      after: '2 3 5 1 4 6',
    },
    {
      before: '1 2 3 4 5',
      sentence: 'Strip out 2 cards and put them beneath.',
      choices: ['strip', 'keep', 'keep', 'strip'],
      after: '2 3 5 1 4',
    },
  ],
});

/**
 * Card by card from the top, each goes to `~kept` or `~stripped`; `finish` says what becomes of the two heaps. Only the sizes are
 * carried along. As soon as the number asked for decides the rest, the rest goes in one block.
 */
export function separate(
  ref: PileRef,
  count: Amount,
  view: View,
  finish: (stripped: number, kept: number, pile: string) => readonly Action[],
): readonly Option[] | ReturnType<typeof stuck> {
  const pile = pileName(ref, view);
  const rest = sizeOf(view.layout, pile);
  const kept = sizeOf(view.layout, '~kept');
  const stripped = sizeOf(view.layout, '~stripped');
  const counts = allowed(count, 0, rest + kept + stripped, view);
  if (counts.length === 0) return stuck('not-enough-cards', { pile, size: rest });
  // Counts of stripped cards that can still be reached once `out` are out and `left` are undecided.
  const open = (out: number, left: number): number[] => counts.filter((n) => n >= out && n <= out + left);
  const way = (key: Key, actions: readonly Action[], out: number, left: number): Way => {
    const aims = open(out, left);
    const over = aims.every((n) => n === out)
      ? '~kept'
      : aims.every((n) => n === out + left)
        ? '~stripped'
        : undefined;
    if (over === undefined) return { key, actions, next: 'going' };
    const all = rest + kept + stripped;
    const finalOut = over === '~kept' ? out : out + left;
    const block = left === 0 ? [] : [carry(pile, 0, left, over, over === '~kept' ? all - out - left : out)];
    return { key, actions: [...actions, ...block, ...finish(finalOut, all - finalOut, pile)], next: null };
  };
  if (rest === 0) return [{ ...way('keep', [], stripped, 0), off: 0 }];
  const ways: Way[] = [];
  if (open(stripped, rest - 1).length > 0)
    ways.push(way('keep', [carry(pile, 0, 1, '~kept', kept)], stripped, rest - 1));
  if (open(stripped + 1, rest - 1).length > 0)
    ways.push(way('strip', [carry(pile, 0, 1, '~stripped', stripped)], stripped + 1, rest - 1));
  return view.phase === START ? decided(ways) : within(ways);
}

/** The places of the stripped cards, as far as they were chosen one by one. */
export function saidPlaces(keys: readonly Key[]): string {
  const places = keys.flatMap((key, i) => (key === 'strip' ? [i + 1] : []));
  if (places.length === 0) return 'nothing but what is left at the end';
  return `${places.length === 1 ? 'the card at place' : 'the cards at places'} ${places.join(', ')}`;
}
