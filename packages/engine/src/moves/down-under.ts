import { trouble } from '../base/diagnostic.ts';
import type { NumberRef, PileRef } from '../phrases/values.ts';
import { phrase, same } from '../phrases/phrase.ts';
import { carry, type Action } from '../pictures/actions.ts';
import { named, PILE } from './handling.ts';
import { defineMove, numberOf, pileName, pileSize, stuck } from './move.ts';

export type DownUnder = 'down-under' | 'under-down';
type DownUnderArgs = { pile: PileRef; order: DownUnder; left: NumberRef; to: PileRef };

/** Both words for a blank: which comes first, a card to the table or a card beneath the packet. */
export const DOWN_UNDER =
  '{order=down-under~down and under~down, under~one down, one under~deal and duck|under-down~under and down~under, down~one under, one down~duck and deal}';

/** Alternately a card to the table and a card beneath, until so many are left in the hand. */
export function downUnder(pile: string, size: number, left: number, order: DownUnder, to: string): Action[] {
  const actions: Action[] = [];
  let down = order === 'down-under';
  for (let n = size; n > left; down = !down) {
    actions.push(down ? carry(pile, 0, 1, to, 0) : carry(pile, 0, 1, pile, n - 1));
    if (down) n--;
  }
  return actions;
}

/** P36: down-under or under-down deal until one card, or so many, are left. */
export const downUnderDeal = defineMove<DownUnderArgs>({
  id: 'down-under',
  procedures: ['P36'],
  hands: 'deal',
  title: 'down-under deal',
  phrases: [
    phrase(
      `deal ${PILE} ${DOWN_UNDER} [(to|onto) {to:newpile}] until (one|only one) card (is left|remains)`,
      { left: 1 },
    ),
    phrase(
      `deal ${PILE} ${DOWN_UNDER} [(to|onto) {to:newpile}] until [only] {left:number} (cards are left|cards remain|card is left|card remains)`,
    ),
    phrase(
      `${DOWN_UNDER} deal ${PILE} [(to|onto) {to:newpile}] until (one|only one) card (is left|remains)`,
      { left: 1 },
    ),
    phrase(`deal ${DOWN_UNDER} [(to|onto) {to:newpile}] until (one|only one) card (is left|remains)`, {
      left: 1,
    }),
    phrase(
      `deal ${DOWN_UNDER} [(to|onto) {to:newpile}] until [only] {left:number} (cards are left|cards remain|card is left|card remains)`,
    ),
  ],
  defaults: { pile: 'packet', to: 'table' },
  help:
    'Down-under: the first card to the table, the next beneath the packet, and so on. Under-down begins with a card beneath. ' +
    'The dealt cards make a pile, the last ones stay in hand.',
  caution:
    'Which comes first decides which card is last: of 2^m + L cards it is number 2L down-under (or the last when L = 0), 2L + 1 under-down.',
  synonyms: ['duck and deal', 'deal and duck'],
  brings: ({ to }) => ({ piles: named(to) }),
  check: ({ pile, to }) => (same(pile, to) ? [trouble('pile-twice')] : []),
  readings: ({ order }) => [
    {
      word: order,
      taken: order === 'down-under' ? 'the first card goes to the table' : 'the first card goes beneath',
      other: `Deal the packet ${order === 'down-under' ? 'under-down' : 'down-under'} until ...`,
    },
  ],
  options(args, view) {
    const pile = pileName(args.pile, view);
    const to = pileName(args.to, view);
    const size = pileSize(args.pile, view);
    const left = numberOf(args.left, view);
    if (pile === to) return stuck('pile-twice', { piles: [pile] });
    if (left > size) return stuck('not-enough-cards', { pile, size });
    return [{ key: args.order, actions: downUnder(pile, size, left, args.order, to), next: null, off: 0 }];
  },
  say: () => '',
  examples: [
    {
      before: '1 2 3 4 5 6 7 8 9 10',
      sentence: 'Deal the packet down-under until one card is left.',
      choices: [],
      after: 'packet: 4; table: 8 10 6 2 9 7 5 3 1',
    },
    {
      before: '1 2 3 4 5 6 7 8 9 10',
      sentence: 'Deal the packet under-down until 2 cards are left.',
      choices: [],
      after: 'packet: 5 9; table: 1 7 3 10 8 6 4 2',
    },
  ],
});
