import type { Amount, PileRef } from '../phrases/values.ts';
import { phrase } from '../phrases/phrase.ts';
import { carry } from '../pictures/actions.ts';
import { isOpen } from './open.ts';
import { allowed, defineMove, pileName, pileSize, stuck } from './move.ts';

type CutArgs = { pile: PileRef; at: Amount };

/** P1, P2: a complete cut. Cutting at 0 or at all the cards changes nothing and is a choice like any other. */
export const cut = defineMove<CutArgs>({
  id: 'cut',
  procedures: ['P1', 'P2'],
  hands: 'cut',
  title: 'complete cut',
  phrases: [
    phrase('cut {pile:pile} [[exactly] at {at:amount}]'),
    phrase('cut {pile:pile} [[exactly] at {at:amount}] and complete the cut'),
    phrase('cut [[exactly] at {at:amount}] [and complete the cut]'),
    phrase('give {pile:pile} a [complete|straight|single] cut [[exactly] at {at:amount}]'),
    phrase('cut {at:topcards} [of {pile:pile}] to the bottom'),
    phrase('cut {pile:pile} [exactly] in half and complete the cut', { at: { of: 'half' } }),
  ],
  defaults: { pile: 'packet', at: { of: 'any' } },
  help: 'Some cards are lifted from the top and go beneath the rest. The order goes round like a ring; only where it starts changes.',
  caution: 'The cut is completed. Any number of cuts is one cut.',
  synonyms: ['straight cut', 'complete the cut'],
  readings: () => [{ word: 'cut', taken: 'the cut is completed', other: 'Cut off ... cards to a new pile' }],
  options(args, view) {
    const pile = pileName(args.pile, view);
    const size = pileSize(args.pile, view);
    const places = allowed(args.at, 0, size, view);
    // Cutting all the cards is cutting none: one option, unless only the full number was asked for.
    const distinct = places.filter((c) => c < size || !places.includes(0));
    if (distinct.length === 0)
      return stuck(args.at.of === 'half' ? 'odd-number-of-cards' : 'cut-too-deep', { pile, size });
    return distinct.map((c) => ({
      key: c,
      actions: c === 0 || c === size ? [] : [carry(pile, 0, c, pile, size - c)],
      next: null,
      off: c === distinct[0] ? 0 : 1,
    }));
  },
  say: ({ at }, [c]) => (!isOpen(at) ? '' : c === 0 ? 'cuts nothing' : `cuts ${c}`),
  examples: [
    { before: '1 2 3 4 5 6 7 8', sentence: 'Cut the packet.', choices: [3], after: '4 5 6 7 8 1 2 3' },
    { before: '1 2 3 4 5 6 7 8', sentence: 'Cut the packet at 3.', choices: [], after: '4 5 6 7 8 1 2 3' },
    {
      before: '1 2 3 4 5 6',
      sentence: 'Give the packet a complete cut at an even number.',
      choices: [4],
      after: '5 6 1 2 3 4',
    },
    {
      before: 'n = 2; packet: 5 6; pile 1: 1 2^ 3',
      sentence: 'Cut pile 1 exactly at N and complete the cut.',
      choices: [],
      after: 'packet: 5 6; pile 1: 3 1 2^',
    },
  ],
});
