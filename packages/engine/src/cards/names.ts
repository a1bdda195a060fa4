/** The ranks of a pack, ace first; the index plus one is the value. */
export const RANKS = ['A', '2', '3', '4', '5', '6', '7', '8', '9', '10', 'J', 'Q', 'K'] as const;

export const SUITS = ['clubs', 'hearts', 'spades', 'diamonds'] as const;

export type Rank = (typeof RANKS)[number];
export type Suit = (typeof SUITS)[number];

/** A card of a common pack by rank and suit. */
export interface PipCard {
  readonly rank: Rank;
  readonly suit: Suit;
}

const RANK_WORDS: Readonly<Record<Rank, readonly string[]>> = {
  A: ['ace', 'one'],
  '2': ['two', 'deuce'],
  '3': ['three'],
  '4': ['four'],
  '5': ['five'],
  '6': ['six'],
  '7': ['seven'],
  '8': ['eight'],
  '9': ['nine'],
  '10': ['ten'],
  J: ['jack', 'knave'],
  Q: ['queen'],
  K: ['king'],
};

const SUIT_SIGNS: Readonly<Record<Suit, string>> = {
  clubs: 'c♣♧',
  hearts: 'h♥♡',
  spades: 's♠♤',
  diamonds: 'd♦♢',
};

/** Rank in figures, letters or words, in any case; null for anything else. */
export function parseRank(text: string): Rank | null {
  const word = text.trim().toLowerCase();
  return RANKS.find((rank) => rank.toLowerCase() === word || RANK_WORDS[rank].includes(word)) ?? null;
}

/** Suit as a word in either number, a letter or a sign; null for anything else. */
export function parseSuit(text: string): Suit | null {
  const word = text.trim().toLowerCase();
  if (word === '') return null;
  return (
    SUITS.find(
      (suit) =>
        word === suit || `${word}s` === suit || (word.length === 1 && SUIT_SIGNS[suit].includes(word)),
    ) ?? null
  );
}

/** `10C`, `10♣`, `as`, `ten of clubs`, `10 of clubs`, `the Queen of Hearts`: rank and suit, or null. */
export function parseCardName(text: string): PipCard | null {
  const written =
    /^\s*(?:the\s+)?(\w+)\s+of\s+(\p{L}+|[♠♥♦♣♤♡♢♧])\s*$/iu.exec(text) ??
    /^\s*(10|[2-9]|[ajqk])\s*(.)\s*$/iu.exec(text);
  if (written === null) return null;
  const rank = parseRank(written[1]);
  const suit = parseSuit(written[2]);
  return rank === null || suit === null ? null : { rank, suit };
}

/** How a card of a common pack is written: `10C`. */
export function printCardName({ rank, suit }: PipCard): string {
  return rank + suit[0].toUpperCase();
}

/** `ace`, `ten`: the rank as it is spoken. */
export function rankWord(rank: Rank): string {
  return RANK_WORDS[rank][0];
}
