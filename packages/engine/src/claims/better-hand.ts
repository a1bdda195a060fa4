import type { Card } from '../cards/card.ts';
import { RANKS, SUITS } from '../cards/names.ts';
import { phrase, same } from '../phrases/phrase.ts';
import type { PileRef } from '../phrases/values.ts';
import { trouble } from '../base/diagnostic.ts';
import { defineClaim, means } from './claim.ts';
import { FALSE, type Measure, type Term } from './formula.ts';
import { HAND, strength } from './hands.ts';
import { slotsIn } from './piles.ts';

type BetterHandArgs = { p: PileRef; q: PileRef };

/** 2 to 14, the ace high. */
const RANK: Measure = {
  id: 'rank with the ace high',
  attributes: ['rank'],
  bits: [],
  of: ({ attributes: { rank } }) => (((RANKS as readonly unknown[]).indexOf(rank) + 12) % 13) + 2,
};
const SUIT: Measure = {
  id: 'number of the suit',
  attributes: ['suit'],
  bits: [],
  of: ({ attributes: { suit } }) => (SUITS as readonly unknown[]).indexOf(suit),
};

/** C17: of two hands of five cards the one beats the other. */
export const betterHand = defineClaim<BetterHandArgs>({
  id: 'better-hand',
  endings: ['C17'],
  title: 'the better hand',
  phrases: [
    phrase('{p:pile} beats {q:pile} [as a hand|at poker]'),
    phrase('{p:pile} is [a|the] better hand than {q:pile}'),
  ],
  defaults: {},
  help: 'Of two hands of five cards the first is the better: straight flush, four of a kind, full house, flush, straight, three of a kind, two pairs, one pair, high card. Among hands of one sort the higher cards tell; suits do not.',
  caution:
    'The ace is high, and low only in the straight from ace to five. Hands that are equally good do not beat one another. Of other numbers of cards the sentence is false.',
  synonyms: ['beats', 'winning hand', 'losing hand', 'poker hand'],
  attributes: () => ['rank', 'suit'],
  check: ({ p, q }) => (same(p, q) ? [trouble('pile-twice')] : []),
  meaning({ p, q }, exit) {
    const one = slotsIn(p, exit);
    if (!one.ok) return one;
    const two = slotsIn(q, exit);
    if (!two.ok) return two;
    if (one.value.length !== HAND || two.value.length !== HAND) return means(FALSE);
    const slots = [...one.value, ...two.value];
    // Without five cards of a suit nobody has to look at suits.
    const measures = canFlush(exit.cards) ? [RANK, SUIT] : [RANK];
    const terms = measures.flatMap((measure) => slots.map((slot): Term => ({ slot, coef: 1, measure })));
    const hand = (readings: readonly number[], k: number): number =>
      strength(
        readings.slice(k * HAND, (k + 1) * HAND),
        measures.length === 1 ? undefined : readings.slice((k + 2) * HAND, (k + 3) * HAND),
      );
    return means({
      is: 'judged',
      id: 'better hand',
      terms,
      judge: (readings) => hand(readings, 0) > hand(readings, 1),
    });
  },
  examples: [
    {
      table: 'hand 1: 4S 4H 4D 9C 9S; hand 2: AS AH AD KC QS',
      sentence: 'Hand 1 beats hand 2.',
      holds: true,
    },
    {
      table: 'hand 1: AS 2S 3S 4S 5S; hand 2: 2H 3H 4H 5H 6H',
      sentence: 'Hand 2 is the better hand than hand 1.',
      holds: true,
    },
    {
      table: 'hand 1: AS AH 7D 4C 2S; hand 2: AC AD 7H 4S 2D',
      sentence: 'Hand 1 beats hand 2.',
      holds: false,
    },
    {
      table: 'hand 1: 2S 7S 9S JS KS; hand 2: 10H JH QD KC AS',
      sentence: 'Hand 1 beats hand 2.',
      holds: true,
    },
  ],
});

function canFlush(cards: readonly Card[]): boolean {
  const suits = new Map<unknown, number>();
  for (const { attributes } of cards) suits.set(attributes.suit, (suits.get(attributes.suit) ?? 0) + 1);
  return [...suits.values()].some((n) => n >= HAND);
}
