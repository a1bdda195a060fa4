import type { AttributeValue, Card } from './card.ts';
import { colourOf, printCardName, RANKS, SUITS, valueOf, type PipCard } from './names.ts';

/** Everything the engine knows of a playing card; an ace counts 1 and courts 11, 12, 13. */
export function attributesOf(card: PipCard): Readonly<Record<string, AttributeValue>> {
  const value = valueOf(card.rank);
  return {
    rank: card.rank,
    suit: card.suit,
    colour: colourOf(card.suit),
    value,
    parity: parityOf(value),
    court: value > 10 ? 'court' : 'spot',
  };
}

export function parityOf(value: number): 'odd' | 'even' {
  return value % 2 === 0 ? 'even' : 'odd';
}

export function playingCard(id: number, card: PipCard): Card {
  return { id, name: printCardName(card), attributes: attributesOf(card) };
}

/** The 52 names, suit by suit in the order clubs, hearts, spades, diamonds, ace to king in each. */
export const PACK: readonly PipCard[] = SUITS.flatMap((suit) => RANKS.map((rank) => ({ rank, suit })));

/** A pack of 52 in the order of `PACK`, ids 0 to 51. */
export function fullPack(): Card[] {
  return PACK.map((card, id) => playingCard(id, card));
}
