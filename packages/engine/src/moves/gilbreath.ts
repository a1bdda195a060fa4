import type { Amount, PileRef } from '../phrases/values.ts';
import { phrase } from '../phrases/phrase.ts';
import { carry } from '../pictures/actions.ts';
import { cardCount, dealSingly, PILE } from './handling.ts';
import { dropNext, saidDrops } from './interleave.ts';
import { defineMove, pileName, pileSize, START } from './move.ts';
import { chooseNumber } from './open.ts';

type GilbreathArgs = { pile: PileRef; count: Amount };

const RIFFLE =
  '[then] riffle (the two (packets|piles|parts|heaps) together|them into the rest|the (pile|heap) into the rest|both together)';

/** P50: some cards dealt off, which reverses them, then riffled into the rest. */
export const gilbreath = defineMove<GilbreathArgs>({
  id: 'gilbreath',
  procedures: ['P50'],
  hands: 'mix',
  title: 'deal and riffle',
  phrases: [
    phrase(
      `(deal|count|deal off|count off) {count:cards} [from {pile:pile}] (to the table|onto the table|into a pile|into a heap|) and ${RIFFLE}`,
    ),
    phrase(`(Gilbreath-shuffle|Gilbreath) ${PILE} [, dealing off {count:cards}]`),
    phrase(`give ${PILE} a Gilbreath [shuffle]`),
  ],
  defaults: { pile: 'packet', count: { of: 'any' } },
  help:
    'Cards are dealt to the table, which reverses them, and the two packets are riffled together. If every run of k cards was complete, ' +
    'every block of k from the top still is. Choices: how many are dealt, then where each card falls from, from the bottom up.',
  caution: 'Only once: a second shuffle breaks it. Without the reversal it does not work.',
  synonyms: ['Gilbreath shuffle'],
  readings: () => [
    {
      word: 'deal',
      taken: 'one at a time, so that the dealt cards are reversed',
      other: 'Riffle the packet',
    },
  ],
  options(args, view) {
    const pile = pileName(args.pile, view);
    if (view.phase !== START)
      return dropNext(
        [
          { key: 'dealt', pile: '~dealt' },
          { key: 'rest', pile: '~rest' },
        ],
        pile,
        view,
      );
    const size = pileSize(args.pile, view);
    return chooseNumber(args.count, args.pile, view, (k) => {
      if (k === 0 || k === size) return { actions: dealSingly(pile, k, pile), next: null };
      const actions = [...dealSingly(pile, k, '~dealt'), carry(pile, 0, size - k, '~rest', 0)];
      return { actions, next: 'drop' };
    });
  },
  say: (_args, [k, ...drops]) =>
    `deals ${k === 0 ? 'nothing' : cardCount(Number(k))}${drops.length === 0 ? '' : ` and lets fall ${saidDrops(drops)}`}`,
  examples: [
    {
      before: '1 2 3 4 5 6 7 8',
      sentence: 'Deal any number of cards to the table and riffle the two packets together.',
      choices: [3, 'rest', 'rest', 'dealt', 'dealt', 'rest', 'rest', 'dealt'],
      after: '4 3 5 6 2 1 7 8',
    },
    { before: '1 2 3 4', sentence: 'Gilbreath-shuffle the packet.', choices: [4], after: '4 3 2 1' },
  ],
});
