import type { PileRef, PlaceRef } from '../phrases/values.ts';
import { phrase } from '../phrases/phrase.ts';
import { printOrdinal } from '../phrases/tokens.ts';
import { carry } from '../pictures/actions.ts';
import { decided } from './handling.ts';
import { defineMove, pileName, pileSize, placeIndex, stuck } from './move.ts';

type RotateCardArgs = { pile: PileRef; at?: PlaceRef };

/** P21: one card turned round flat; with one-way backs it is then the only one that points the other way. */
export const rotateCard = defineMove<RotateCardArgs>({
  id: 'rotate-card',
  procedures: ['P21'],
  hands: 'turn',
  title: 'rotate one card',
  phrases: [
    phrase('rotate {at:place} [of {pile:pile}] in place'),
    phrase('rotate {at:nthcard} [of {pile:pile}] [(half a turn|end for end)]'),
    phrase('rotate any card [of {pile:pile}] [in place]'),
  ],
  defaults: { pile: 'packet' },
  help: 'One card is turned round flat by half a turn where it lies: only its ends are exchanged.',
  caution:
    'Cuts, deals, shuffles and blocks turned sideways keep the difference; a wash or rotating a part loses it.',
  synonyms: ['one-way back'],
  options(args, view) {
    const pile = pileName(args.pile, view);
    const size = pileSize(args.pile, view);
    const all = Array.from({ length: size }, (_, i) => i);
    const wanted =
      args.at === undefined ? all : all.filter((i) => i === placeIndex(args.at as PlaceRef, size, view));
    if (wanted.length === 0) return stuck('no-such-card', { pile, size });
    return decided(
      wanted.map((i) => ({ key: i + 1, actions: [carry(pile, i, 1, pile, i, { spun: true })], next: null })),
    );
  },
  say: ({ at }, [n]) => (at === undefined ? `rotates the ${printOrdinal(Number(n))} card` : ''),
  examples: [
    { before: '1 2 3', sentence: 'Rotate the 2nd card.', choices: [], after: "1 2' 3" },
    { before: '1 2 3', sentence: 'Rotate any card.', choices: [3], after: "1 2 3'" },
  ],
});
