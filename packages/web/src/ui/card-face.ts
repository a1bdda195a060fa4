export const SUIT_NAMES = ['clubs', 'hearts', 'spades', 'diamonds'] as const;
export type Suit = (typeof SUIT_NAMES)[number];

const RANK_WORDS = {
  A: 'ace',
  '2': 'two',
  '3': 'three',
  '4': 'four',
  '5': 'five',
  '6': 'six',
  '7': 'seven',
  '8': 'eight',
  '9': 'nine',
  '10': 'ten',
  J: 'jack',
  Q: 'queen',
  K: 'king',
} as const;
export type Rank = keyof typeof RANK_WORDS;

/** What is printed on a card's face, as far as the routine knows it. */
export type CardFace =
  | { readonly kind: 'pip'; readonly rank: Rank; readonly suit: Suit }
  /** A card of which nothing is known. */
  | { readonly kind: 'any' }
  /** A card of which only the colour is known. */
  | { readonly kind: 'colour'; readonly colour: 'red' | 'black' }
  /** A printed card of one's own, or a card known by a word only. */
  | { readonly kind: 'own'; readonly name: string };

/** How a card lies. */
export interface Lie {
  readonly up: boolean;
  /** Turned end for end. */
  readonly end?: boolean;
}

/** What the engine tells of a card; see `Card` there. */
interface KnownCard {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string | number>>;
}

/** What the engine calls a card of which the note says nothing. */
const ANY = 'a card';

/** The face to draw for a card of a routine. */
export function faceOf({ name, attributes }: KnownCard): CardFace {
  const { rank, suit, colour } = attributes;
  if (isRank(rank) && isSuit(suit)) return { kind: 'pip', rank, suit };
  const isOwn = /^["“].*["”]$/.test(name);
  if (!isOwn && (colour === 'red' || colour === 'black')) return { kind: 'colour', colour };
  if (name === ANY) return { kind: 'any' };
  return { kind: 'own', name: isOwn ? name.slice(1, -1) : name };
}

export function sayFace(face: CardFace): string {
  switch (face.kind) {
    case 'pip':
      return `${RANK_WORDS[face.rank]} of ${face.suit}`;
    case 'any':
      return ANY;
    case 'colour':
      return `a ${face.colour} card`;
    case 'own':
      return face.name;
  }
}

/**
 * What a person who does not see the card is told. A card that lies face down keeps its secret unless `known` says that
 * the listener may know it.
 */
export function sayCard(face: CardFace, { up, end = false }: Lie, known = false): string {
  const turned = end ? ', turned end for end' : '';
  if (up) return `${sayFace(face)}, face up${turned}`;
  return known ? `${sayFace(face)}, face down${turned}` : `a card face down${turned}`;
}

function isRank(value: unknown): value is Rank {
  return typeof value === 'string' && Object.hasOwn(RANK_WORDS, value);
}

function isSuit(value: unknown): value is Suit {
  return SUIT_NAMES.some((suit) => suit === value);
}
