import { trouble } from '../base/diagnostic.ts';
import { phrase, same } from '../phrases/phrase.ts';
import type { PileRef } from '../phrases/values.ts';
import { carry } from '../pictures/actions.ts';
import { gapIsOpen, gapsOf, type Gap } from './bury.ts';
import { cardCount, decided } from './handling.ts';
import { defineMove, pileName, pileSize, stuck } from './move.ts';

type PutBackArgs = { pile: PileRef; onto: PileRef; gap: Gap };

/** P60, P62, P63: cards are put back into a pile at some depth, their order kept. */
export const putBack = defineMove<PutBackArgs>({
  id: 'put-back',
  procedures: ['P60', 'P62', 'P63'],
  hands: 'hand over',
  title: 'put cards back',
  phrases: [
    phrase(
      '(insert|return) {pile:pile} (into|to) {onto:pile} ' +
        '({gap=anywhere~at any place|in the middle~somewhere in the middle}|(beneath|under) {gap:cards})',
    ),
    phrase(
      '(put|return) {pile:pile} [back] {gap=anywhere|in the middle~somewhere in the middle} (in|of|into) {onto:pile}',
    ),
    phrase('(insert|return) {pile:pile} (into|to) {onto:pile}', { gap: 'anywhere' }),
    phrase('(return|insert|put back) {pile:pile} [anywhere]', { gap: 'anywhere', onto: 'packet' }),
    phrase('put {pile:pile} back [anywhere]', { gap: 'anywhere', onto: 'packet' }),
  ],
  defaults: { onto: 'packet' },
  help: 'A card or a small pile is put back into another pile at any depth.',
  caution: 'Anywhere may be the top or the bottom; in the middle has a card above and a card below.',
  synonyms: ['insert', 'return a card'],
  check: ({ pile, onto }) => (same(pile, onto) ? [trouble('pile-twice')] : []),
  outermost: { least: 'back on top', most: 'right to the bottom' },
  options(args, view) {
    const pile = pileName(args.pile, view);
    const onto = pileName(args.onto, view);
    if (pile === onto) return stuck('pile-twice', { piles: [pile] });
    const size = pileSize(args.onto, view);
    const count = pileSize(args.pile, view);
    const gaps = gapsOf(args.gap, size, view);
    if (gaps.length === 0) return stuck('no-place-for-it', { pile: onto, size });
    return decided(
      gaps.map((gap) => ({
        key: gap,
        actions: count === 0 ? [] : [carry(pile, 0, count, onto, gap)],
        next: null,
      })),
    );
  },
  say: ({ gap }, [above]) => {
    if (!gapIsOpen(gap)) return '';
    return above === 0 ? 'puts it on top' : `puts it under ${cardCount(Number(above))}`;
  },
  examples: [
    {
      before: 'packet: 1 2 3; left: 4',
      sentence: 'Return the left to the packet anywhere.',
      choices: [2],
      after: '1 2 4 3',
    },
    {
      before: 'packet: 1 2 3; left: 4 5',
      sentence: 'Insert the left into the packet under 1 card.',
      choices: [],
      after: '1 4 5 2 3',
    },
  ],
});
