/** The ranks of a suit, ace low, as they are written in a card's name. */
export const RANKS = ['A', '2', '3', '4', '5', '6', '7', '8', '9', '10', 'J', 'Q', 'K'] as const;
export type Rank = (typeof RANKS)[number];

/** The suits in the order clubs, hearts, spades, diamonds, in which the colours alternate. */
export const SUITS = ['clubs', 'hearts', 'spades', 'diamonds'] as const;
export type Suit = (typeof SUITS)[number];

export const COLOURS = ['red', 'black'] as const;
export type Colour = (typeof COLOURS)[number];

/** A card of a common pack by rank and suit. */
export interface PipCard {
  readonly rank: Rank;
  readonly suit: Suit;
}

export const RANK_WORDS: Readonly<Record<Rank, string>> = {
  A: 'ace',
  2: 'two',
  3: 'three',
  4: 'four',
  5: 'five',
  6: 'six',
  7: 'seven',
  8: 'eight',
  9: 'nine',
  10: 'ten',
  J: 'jack',
  Q: 'queen',
  K: 'king',
};

export const SUIT_LETTERS: Readonly<Record<Suit, string>> = {
  clubs: 'C',
  hearts: 'H',
  spades: 'S',
  diamonds: 'D',
};
export const SUIT_SYMBOLS: Readonly<Record<Suit, string>> = {
  clubs: '♣',
  hearts: '♥',
  spades: '♠',
  diamonds: '♦',
};

const RANK_BY_TEXT: ReadonlyMap<string, Rank> = new Map([
  ...RANKS.flatMap((rank): [string, Rank][] => [
    [rank.toLowerCase(), rank],
    [RANK_WORDS[rank], rank],
  ]),
  ['t', '10'],
  ['one', 'A'],
  ['deuce', '2'],
  ['trey', '3'],
  ['knave', 'J'],
]);

const SUIT_BY_TEXT: ReadonlyMap<string, Suit> = new Map([
  ...SUITS.flatMap((suit): [string, Suit][] => [
    [suit, suit],
    [suit.slice(0, -1), suit],
    [SUIT_LETTERS[suit].toLowerCase(), suit],
    [SUIT_SYMBOLS[suit], suit],
  ]),
  ['♧', 'clubs'],
  ['♡', 'hearts'],
  ['♤', 'spades'],
  ['♢', 'diamonds'],
]);

/** `A`, `ace`, `10`, `T`, `ten`, in any case; null for anything else. */
export function parseRank(text: string): Rank | null {
  return RANK_BY_TEXT.get(text.trim().toLowerCase()) ?? null;
}

/** `clubs`, `club`, `C`, `♣`, in any case; null for anything else. */
export function parseSuit(text: string): Suit | null {
  return SUIT_BY_TEXT.get(text.trim().toLowerCase()) ?? null;
}

// Longer than any name of a card with its spaces; keeps hostile text from costing time.
const MOST_CHARACTERS = 40;

/**
 * Reads `10C`, `TC`, `10♣`, `10 of clubs`, `ten of clubs`, `the ten of clubs`, in any case.
 *
 * @returns null for anything that is not the name of a playing card
 */
export function parseCardName(text: string): PipCard | null {
  if (text.length > MOST_CHARACTERS) return null;
  const plain = text.trim().replaceAll('\uFE0F', '').toLowerCase();
  const code = /^(10|[2-9atjqk])\s?([chsd♣♥♠♦♧♡♤♢])$/u.exec(plain);
  const words = code ?? /^(?:the\s+)?([\p{L}\d]+)\s+of\s+(?:the\s+)?([\p{L}♣♥♠♦♧♡♤♢]+)$/u.exec(plain);
  if (words === null) return null;
  const rank = parseRank(words[1]);
  const suit = parseSuit(words[2]);
  return rank === null || suit === null ? null : { rank, suit };
}

/** How a card of a common pack is written: `10C`. */
export function printCardName({ rank, suit }: PipCard): string {
  return rank + SUIT_LETTERS[suit];
}

/** `10♣`. */
export function cardSymbols({ rank, suit }: PipCard): string {
  return rank + SUIT_SYMBOLS[suit];
}

/** `ten of clubs`: for reading aloud and for spelling. */
export function cardWords({ rank, suit }: PipCard): string {
  return `${RANK_WORDS[rank]} of ${suit}`;
}

/** `ace`, `ten`: the rank as it is spoken. */
export function rankWord(rank: Rank): string {
  return RANK_WORDS[rank];
}

export function colourOf(suit: Suit): Colour {
  return suit === 'hearts' || suit === 'diamonds' ? 'red' : 'black';
}

/** Ace 1, jack 11, queen 12, king 13. */
export function valueOf(rank: Rank): number {
  return RANKS.indexOf(rank) + 1;
}

const MATES: Readonly<Record<Suit, Suit>> = {
  clubs: 'spades',
  spades: 'clubs',
  hearts: 'diamonds',
  diamonds: 'hearts',
};

/** The other suit of the same colour. */
export function mateSuit(suit: Suit): Suit {
  return MATES[suit];
}

/** The card of the same rank and colour: the six of hearts for the six of diamonds. */
export function mateOf(card: PipCard): PipCard {
  return { rank: card.rank, suit: MATES[card.suit] };
}

export function sameCard(a: PipCard, b: PipCard): boolean {
  return a.rank === b.rank && a.suit === b.suit;
}

/** How many letters a word or a name has, spaces and stops not counted: what a spelled deal deals. */
export function spelledLength(text: string): number {
  return text.match(/\p{L}/gu)?.length ?? 0;
}
